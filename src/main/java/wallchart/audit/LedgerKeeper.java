package wallchart.audit;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wallchart.audit.Verification.Doubtful;
import wallchart.audit.Verification.Sound;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.StoreException;

/**
 * Signs a checkpoint every second in which something was entered, after reading and hashing again what came since the last; on
 * any doubt it stops the ledger instead, and signs nothing more until the next start. One thread of its own.
 */
public final class LedgerKeeper implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(LedgerKeeper.class);
    private static final Actor BY = Actor.system("ledger keeper");
    private static final long FAREWELL_SECONDS = 10;

    private final Database database;
    private final CheckpointWatch checkpoints;
    private final LedgerCheck check = new LedgerCheck(List.of());
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(task -> {
        var daemon = new Thread(task, "ledger-keeper");
        daemon.setDaemon(true);
        return daemon;
    });
    private final EventStore rows = new EventStore();
    private final Ledger ledger = new Ledger();
    private long signedUpTo = -1;
    private boolean doubted;

    /** A keeper whose beats somebody else gives. */
    LedgerKeeper(Database database, CheckpointWatch checkpoints) {
        this.database = database;
        this.checkpoints = checkpoints;
    }

    /** Begins to keep the ledger of that database. */
    public static LedgerKeeper start(Database database, Checkpoints checkpoints) {
        var keeper = new LedgerKeeper(database, new CheckpointWatch(checkpoints));
        keeper.thread.scheduleWithFixedDelay(keeper::keep, 0, 1, TimeUnit.SECONDS);
        return keeper;
    }

    /** One beat; what fails because database or folder are away is tried again at the next. */
    synchronized void keep() {
        try {
            if (!doubted) {
                look();
            }
        } catch (StoreException | UncheckedIOException later) {
            LOG.warn("no checkpoint of the ledger was signed: {}", later.getMessage());
        } catch (RuntimeException fault) {
            LOG.error("the ledger's keeper failed", fault);
        }
    }

    private void look() {
        var unsure = checkpoints.findDoubt();
        if (unsure.isPresent()) {
            stop(new Doubtful(0, unsure.get()));
        } else if (database.<Long>read(rows::newest) != signedUpTo) {
            check();
        }
    }

    private void check() {
        // as a write, because what is signed must be safe on disk before
        var found = database.<Verification>write(BY, tx -> check.verifySince(tx, checkpoints.newest()));
        if (found instanceof Doubtful doubt) {
            stop(doubt);
        } else {
            sign((Sound) found);
        }
    }

    private void sign(Sound sound) {
        if (sound.events() > checkpoints.newest().map(Checkpoint::seq).orElse(0L)) {
            checkpoints.add(sound.events(), sound.head(), database.clock().instant());
        }
        signedUpTo = sound.events();
    }

    private void stop(Doubtful doubt) {
        LOG.error("the ledger is in doubt and stops: {}", doubt.what());
        database.run(BY, tx -> ledger.stop(tx, doubt.what())); // and nothing is appended to a chain in doubt
        doubted = true;
    }

    /** Signs what was entered last, then ends. */
    @Override
    public void close() {
        thread.shutdown();
        try {
            if (!thread.awaitTermination(FAREWELL_SECONDS, TimeUnit.SECONDS)) {
                LOG.warn("the ledger's keeper did not end in time");
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
        keep();
    }
}
