package wallchart.audit;

import java.util.Optional;
import java.util.Set;
import wallchart.store.ReadTx;

/** Holds one kind of signed record, such as the versions of charts, against the events that speak of it. */
public interface RecordCheck {

    /** The action of the events that each such record has one of. */
    String action();

    /** What the stored record says otherwise than its event; empty where both say the same. */
    Optional<String> difference(ReadTx tx, Event event);

    /**
     * A stored record that no event speaks of.
     *
     * @param objects of all events of this action
     */
    Optional<String> unrecorded(ReadTx tx, Set<String> objects);
}
