package wallchart.equipment;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.audit.Event;
import wallchart.physics.TubeQuestion;

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

    /** Codes of what was confirmed when this measurement was entered; older events name the kV of outputs alone. */
    public List<String> confirmed() {
        var codes = event.map(told -> told.detailList("confirmed")).orElse(List.of());
        var kilovolts = event.map(told -> told.detailList("confirmedKV")).orElse(List.of());
        return Stream.concat(codes.stream(), kilovolts.stream().map(kV -> TubeQuestion.OUTPUT_AT + kV))
                .toList();
    }
}
