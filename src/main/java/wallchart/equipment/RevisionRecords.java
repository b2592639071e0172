package wallchart.equipment;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import java.util.Set;
import wallchart.audit.Event;
import wallchart.audit.RecordCheck;
import wallchart.store.ReadTx;

/** Holds every stored state of a room's equipment against the event of its installation, and its document against its digest. */
final class RevisionRecords implements RecordCheck {

    private static final JsonMapper MAPPER = new JsonMapper();

    private final EquipmentStore store = new EquipmentStore();

    @Override
    public String action() {
        return RevisionEvent.ACTION;
    }

    @Override
    public Optional<String> difference(ReadTx tx, Event event) {
        var room = event.room().orElse("");
        return store.list(tx, room).stream()
                .filter(revision -> RevisionEvent.object(room, revision).equals(event.object()))
                .findFirst()
                .map(revision -> difference(revision, event))
                .orElseGet(() -> Optional.of(event.object() + " is not stored"));
    }

    private static Optional<String> difference(RoomRevision revision, Event event) {
        try {
            var details = MAPPER.readTree(event.details());
            return RevisionEvent.details(revision).entrySet().stream()
                    .filter(said -> !String.valueOf(said.getValue())
                            .equals(details.path(said.getKey()).asText()))
                    .map(said -> event.object() + " has another " + said.getKey())
                    .sorted()
                    .findFirst();
        } catch (JsonProcessingException notJson) {
            return Optional.of(event.object() + " has an event that is no JSON");
        }
    }

    @Override
    public Optional<String> unrecorded(ReadTx tx, Set<String> objects) {
        return store.rooms(tx).stream()
                .flatMap(room -> store.list(tx, room).stream().map(revision -> RevisionEvent.object(room, revision)))
                .filter(object -> !objects.contains(object))
                .findFirst()
                .map(object -> object + " is stored, but the ledger has no event of its installation");
    }
}
