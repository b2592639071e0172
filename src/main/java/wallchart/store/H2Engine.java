package wallchart.store;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.sql.DataSource;

/**
 * H2 inside this process, in a file or in memory.
 *
 * <p>Two users. The owner's one connection is opened first and stays open: it sets the write delay to 0 (which does not
 * survive a reopen and which nobody else may set), migrates, and syncs after every write. Requests are served by {@code
 * wallchart_app}, who may read and write rows and nothing else; its password is random at every start and kept nowhere.
 */
final class H2Engine implements Engine {

    private static final Pattern ADDRESS = Pattern.compile("jdbc:h2:(file|mem):[^;]+");
    /** No delay; and no closing by a hook of H2's own while the server still ends its requests. */
    private static final String OWNERS_SETTINGS = ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";

    private static final int ALREADY_OPEN_ELSEWHERE = 90020;
    private static final int WRONG_USER_OR_PASSWORD = 28000;

    private final DatabaseSettings settings;
    private final Connection owner;
    private final LastingConnections lasting;
    private final WriteTurn turn = new WriteTurn();
    private HikariDataSource pool;

    private H2Engine(DatabaseSettings settings, Connection owner) {
        this.settings = settings;
        this.owner = owner;
        this.lasting = new LastingConnections(settings);
    }

    static H2Engine open(DatabaseSettings settings) {
        if (!ADDRESS.matcher(settings.url()).matches()) {
            throw StoreException.cannotOpen(
                    "database address \"" + settings.url()
                            + "\" must be jdbc:h2:file:path or jdbc:h2:mem:name, without settings after a semicolon",
                    null);
        }
        OwnersFile.prepare(settings.url());
        try {
            var owner =
                    DriverManager.getConnection(settings.url() + OWNERS_SETTINGS, settings.user(), settings.password());
            return new H2Engine(settings, owner).refuseSecondOpening();
        } catch (SQLException failed) {
            throw StoreException.cannotOpen(why(settings.url(), failed), failed);
        }
    }

    private static String why(String url, SQLException failed) {
        return switch (failed.getErrorCode()) {
            case ALREADY_OPEN_ELSEWHERE ->
                "database " + url + " is in use by another process: stop the other server, or name another file";
            case WRONG_USER_OR_PASSWORD -> "database " + url + " refuses this user or password: check the settings";
            default ->
                "database " + url + " cannot be opened: "
                        + failed.getMessage().lines().findFirst().orElse("no reason given");
        };
    }

    /** Within one process H2 would let a second opening in, and its new password would lock the first pool out. */
    private H2Engine refuseSecondOpening() throws SQLException {
        if (H2Rights.isServing(owner)) {
            owner.close();
            throw StoreException.cannotOpen(
                    "database " + settings.url() + " is already open in this process: close it first", null);
        }
        return this;
    }

    @Override
    public String dialect() {
        return "h2";
    }

    @Override
    public DataSource owner() {
        return lasting;
    }

    @Override
    public DataSource openPool() throws SQLException {
        var password = H2Rights.renew(owner);
        pool = Pools.open(Pools.config(settings.url(), H2Rights.APPLICATION, password, settings.poolSize()));
        return pool;
    }

    /** At a lower level H2 takes the state of each table when it is first asked: a check would see an act without its event. */
    @Override
    public int oneState() {
        return Connection.TRANSACTION_SERIALIZABLE;
    }

    @Override
    public <T> T inTurn(Supplier<T> write) {
        return isInFile() ? turn.take(write) : write.get();
    }

    private boolean isInFile() {
        return settings.url().startsWith("jdbc:h2:file:");
    }

    @Override
    public void makeDurable() throws SQLException {
        if (isInFile()) {
            synchronized (owner) {
                try (var checkpoint = owner.createStatement()) {
                    checkpoint.execute("CHECKPOINT SYNC");
                }
            }
        }
    }

    @Override
    public void close() {
        if (pool != null) {
            pool.close();
        }
        try {
            lasting.closeAll();
            owner.close();
        } catch (SQLException failed) {
            throw Faults.translate(failed);
        }
    }
}
