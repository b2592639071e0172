package wallchart.store;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import wallchart.store.StoreException.Kind;

/**
 * Lets the writes of an H2 file through one at a time, in the order in which they came.
 *
 * <p>H2 2.4.240 stores all there is when one transaction commits, what others have half done included. If a process is killed then and
 * the file holds a row of such a transaction without its undo log, nothing takes the row back, and later transactions see it or
 * not, by the number that each happens to have: the ledger would have a gap for some and none for others. Where a single
 * transaction writes, nothing is half done when anything is stored.
 */
final class WriteTurn {

    private static final long PATIENCE_SECONDS = 10;

    private final ReentrantLock turn = new ReentrantLock(true);

    /** @throws StoreException of kind {@code CONFLICT} if others write for so long that it is better to ask again */
    <T> T take(Supplier<T> write) {
        await();
        try {
            return write.get();
        } finally {
            turn.unlock();
        }
    }

    private void await() {
        try {
            if (!turn.tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new StoreException(Kind.CONFLICT, "other writes are in the way: try again shortly", null);
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new StoreException(Kind.CONFLICT, "interrupted while other writes were in the way", asked);
        }
    }
}
