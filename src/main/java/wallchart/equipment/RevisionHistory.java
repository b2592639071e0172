package wallchart.equipment;

import java.util.List;
import java.util.Optional;
import wallchart.audit.Event;

/**
 * One state of a room's equipment with what was entered about it in the ledger.
 *
 * @param revision the state
 * @param event its event; absent only where the ledger is in doubt
 */
public record RevisionHistory(RoomRevision revision, Optional<Event> event) {

    /** Why it was entered, in the words of whoever entered it; empty where nobody said. */
    public String reason() {
        return event.map(Event::reason).orElse("");
    }

    /** The tube voltages whose outputs were confirmed when this measurement was entered. */
    public List<String> confirmedKV() {
        return event.map(told -> told.detailList("confirmedKV")).orElse(List.of());
    }
}
