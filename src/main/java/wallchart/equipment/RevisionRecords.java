package wallchart.equipment;

import java.util.Optional;
import java.util.Set;
import wallchart.audit.Event;
import wallchart.audit.OneEventEach;
import wallchart.store.ReadTx;

/** Holds every stored state of a room's equipment against the event of its installation, and its document against its digest. */
final class RevisionRecords implements OneEventEach {

    private final EquipmentStore store = new EquipmentStore();

    @Override
    public String action() {
        return RevisionEvent.ACTION;
    }

    @Override
    public Optional<String> difference(ReadTx tx, Event event) {
        var room = event.room().orElse("");
        return store.find(tx, room, event.objectNumber())
                .filter(revision ->
                        RevisionEvent.object(room, revision.number()).equals(event.object()))
                .map(revision -> event.findDifference(RevisionEvent.details(revision)))
                .orElseGet(() -> Optional.of(event.object() + " is not stored"));
    }

    @Override
    public Optional<String> unrecorded(ReadTx tx, Set<String> objects) {
        return store.objects(tx).stream()
                .filter(object -> !objects.contains(object))
                .findFirst()
                .map(object -> object + " is stored, but the ledger has no event of its installation");
    }
}
