package wallchart.people;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallchart.audit.RecordCheck;
import wallchart.audit.RecordWalk;
import wallchart.store.ReadTx;

/** Holds every room token against the events that issued and revoked it: none opens another room, and none works again. */
final class RoomTokenRecords implements RecordCheck {

    private final RoomTokenStore tokens = new RoomTokenStore();

    @Override
    public Set<String> actions() {
        return Set.of(AccountEvents.ISSUED, AccountEvents.REVOKED);
    }

    @Override
    public RecordWalk begin(ReadTx tx) {
        return new ReplayedRecords(RoomTokenRecords::follow, () -> tokens.records(tx));
    }

    private static Optional<String> follow(ReplayedRecords.Replay replay) {
        var event = replay.event();
        var room = event.room().orElse("");
        var label = event.detail("label").orElse("");
        return event.action().equals(AccountEvents.ISSUED)
                ? replay.begin(Map.of(
                        "room", room, "label", label, "issued_at", event.at().toString(), "issued_by", event.actor()))
                : replay.goOn(Map.of("room", room, "label", label), token -> token.with("revoked_at", event.at())
                        .with("revoked_by", event.actor()));
    }
}
