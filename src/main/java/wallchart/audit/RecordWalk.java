package wallchart.audit;

import java.util.Optional;

/** One walk of a {@link RecordCheck} along the ledger; it is handed the events of its actions in their order. */
public interface RecordWalk {

    /** What the stored records say otherwise than this event, or why it cannot follow those before; empty where all fits. */
    Optional<String> difference(Event event);

    /** After the newest event: a stored record that no event speaks of, or one that is not as the events left it. */
    Optional<String> unrecorded();
}
