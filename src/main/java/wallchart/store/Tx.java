package wallchart.store;

import java.time.Instant;
import org.jdbi.v3.core.Handle;

/** One business act: all of it happens, or none of it. It has one connection, one instant and one actor. */
public final class Tx extends ReadTx {

    private final Actor by;

    Tx(Handle handle, Instant at, Actor by) {
        super(handle, at);
        this.by = by;
    }

    /** Who acts. */
    public Actor by() {
        return by;
    }
}
