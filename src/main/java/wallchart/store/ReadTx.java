package wallchart.store;

import java.time.Instant;
import org.jdbi.v3.core.Handle;

/**
 * One look at the database: every query made through it sees the same state. A method that only reads takes this, so that
 * it can be called inside a write ({@link Tx}) as well.
 *
 * <p>Valid only inside the function it was handed to, and only on that thread.
 */
public sealed class ReadTx permits Tx {

    private final Handle handle;
    private final Instant at;

    ReadTx(Handle handle, Instant at) {
        this.handle = handle;
        this.at = at;
    }

    /** The connection, for {@code …Store} classes only. */
    public Handle handle() {
        return handle;
    }

    /** The one instant of this transaction, UTC, in whole microseconds: what a column keeps. */
    public Instant at() {
        return at;
    }
}
