package wallchart.equipment;

import java.util.Optional;
import wallchart.audit.Event;

/**
 * One state of a room's equipment with what was entered about it in the ledger.
 *
 * @param revision the state
 * @param reason why it was entered, in the words of whoever entered it; empty where nobody said
 * @param event its event; absent only where the ledger is in doubt
 */
public record RevisionHistory(RoomRevision revision, String reason, Optional<Event> event) {

    static RevisionHistory of(RoomRevision revision, Optional<Event> event) {
        return new RevisionHistory(revision, event.map(Event::reason).orElse(""), event);
    }
}
