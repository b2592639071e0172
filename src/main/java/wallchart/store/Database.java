package wallchart.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import wallchart.store.StoreException.Kind;

/**
 * The department's database, migrated and ready. Safe for use by many threads.
 *
 * <p>Every reading and every business act goes through {@link #read}, {@link #write} or {@link #run}; none of them may be
 * called inside another on the same thread, because the inner one would not belong to the outer transaction.
 */
public final class Database implements AutoCloseable {

    private final Engine engine;
    private final Jdbi jdbi;
    private final Mode mode;
    private final ThreadLocal<Boolean> busy;
    private final Clock clock;
    private final boolean owner;

    private Database(Engine engine, Jdbi jdbi, Mode mode, ThreadLocal<Boolean> busy, Clock clock, boolean owner) {
        this.engine = engine;
        this.jdbi = jdbi;
        this.mode = mode;
        this.busy = busy;
        this.clock = clock;
        this.owner = owner;
    }

    /**
     * Opens the database, creating and migrating its tables where needed.
     *
     * @param mode what it is for; a database made for the other mode is refused before anything is written
     * @throws StoreException of kind {@code CANNOT_OPEN}, with the address and the next step
     */
    public static Database open(DatabaseSettings settings, Mode mode, Clock clock) {
        var engine = Engine.open(settings);
        try {
            return prepare(engine, settings.url(), mode, clock);
        } catch (SQLException | RuntimeException failed) {
            engine.close();
            throw failed instanceof StoreException ours
                    ? ours
                    : StoreException.cannotOpen(
                            "database " + settings.url() + " cannot be opened: " + firstLine(failed), failed);
        }
    }

    private static Database prepare(Engine engine, String url, Mode mode, Clock clock) throws SQLException {
        try (var connection = engine.owner().getConnection()) {
            Installation.requireSameOrNone(connection, mode, url);
        }
        new Migration(engine, url).run();
        try (var connection = engine.owner().getConnection()) {
            Installation.claim(connection, mode, instant(clock), url);
        }
        var jdbi = Jdbi.create(engine.openPool());
        QuantityColumns.register(jdbi);
        engine.makeDurable();
        return new Database(engine, jdbi, mode, new ThreadLocal<>(), clock, true);
    }

    /** What this database is for. */
    public Mode mode() {
        return mode;
    }

    /** The clock this database takes its instants from. */
    public Clock clock() {
        return clock;
    }

    /**
     * The same database with another clock, so that a history can be published at the instants it is said to have happened.
     * Closing what this returns does nothing.
     */
    public Database at(Clock other) {
        return new Database(engine, jdbi, mode, busy, other, false);
    }

    /** Looks at one state of the database; whatever the function tries to write is not kept. */
    public <T> T read(Function<? super ReadTx, ? extends T> reading) {
        return alone(handle -> {
            handle.getConnection().setReadOnly(true);
            handle.getConnection().setTransactionIsolation(engine.oneState());
            handle.begin();
            try {
                return reading.apply(new ReadTx(handle, instant(clock)));
            } finally {
                handle.rollback();
            }
        });
    }

    /**
     * Does one business act: all of it, or, if the function throws, nothing.
     *
     * @return what the function returned, after the commit can no longer be lost
     * @throws ConstraintViolated if a named constraint refused it
     * @throws StoreException if the database is away, or another write was in the way
     */
    public <T> T write(Actor by, Function<? super Tx, ? extends T> act) {
        return engine.inTurn(() -> alone(handle -> {
            T result = handle.inTransaction(inner -> act.apply(new Tx(inner, instant(clock), by)));
            engine.makeDurable();
            return result;
        }));
    }

    /** A {@link #write} that has nothing to return. */
    public void run(Actor by, Consumer<? super Tx> act) {
        this.<Object>write(by, tx -> {
            act.accept(tx);
            return null;
        });
    }

    private <T> T alone(Work<T> work) {
        if (busy.get() != null) {
            throw new StoreException(
                    Kind.FAULT,
                    "a transaction is already open on this thread: pass its tx on instead of opening another",
                    null);
        }
        busy.set(true);
        try (var handle = jdbi.open()) {
            return work.with(handle);
        } catch (JdbiException | SQLException failed) {
            throw Faults.translate(failed);
        } finally {
            busy.remove();
        }
    }

    private static Instant instant(Clock clock) {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    private static String firstLine(Exception failed) {
        return String.valueOf(failed.getMessage()).lines().findFirst().orElse("no reason given");
    }

    /** For tests of this package: the engine's own settings. */
    Engine engine() {
        return engine;
    }

    /** Closes the pool and the file. Transactions still running fail. */
    @Override
    public void close() {
        if (owner) {
            engine.close();
        }
    }

    private interface Work<T> {
        T with(Handle handle) throws SQLException;
    }
}
