package wallchart.audit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import wallchart.store.ReadTx;

/** A {@link RecordCheck} of records that never change: each has exactly one event, which says everything that it says. */
public interface OneEventEach extends RecordCheck {

    /** The action of these events. */
    String action();

    /** What the stored record says otherwise than its event; empty where both say the same. */
    Optional<String> difference(ReadTx tx, Event event);

    /**
     * A stored record that no event speaks of.
     *
     * @param objects of all events of this action
     */
    Optional<String> unrecorded(ReadTx tx, Set<String> objects);

    @Override
    default Set<String> actions() {
        return Set.of(action());
    }

    @Override
    default RecordWalk begin(ReadTx tx) {
        var seen = new HashSet<String>();
        return new RecordWalk() {
            @Override
            public Optional<String> difference(Event event) {
                return seen.add(event.object())
                        ? OneEventEach.this.difference(tx, event)
                        : Optional.of(event.object() + " has a second " + action());
            }

            @Override
            public Optional<String> unrecorded() {
                return OneEventEach.this.unrecorded(tx, seen);
            }
        };
    }
}
