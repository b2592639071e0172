package wallchart.audit;

import java.util.Set;
import wallchart.store.ReadTx;

/**
 * Holds one kind of record, such as the versions of charts, against the events that speak of it. Where each record has exactly
 * one event, {@link OneEventEach} is the shorter way.
 */
public interface RecordCheck {

    /** The actions of the events that speak of such records. */
    Set<String> actions();

    /** Begins to follow the ledger from its first event; what is remembered on the way belongs to this walk alone. */
    RecordWalk begin(ReadTx tx);
}
