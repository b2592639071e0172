package wallchart.chart;

import java.util.Optional;
import java.util.Set;
import wallchart.audit.Event;
import wallchart.audit.RecordCheck;
import wallchart.store.ReadTx;

/** Holds every stored version against the event of its signature, and its rows against the digest that was signed. */
final class VersionRecords implements RecordCheck {

    private final VersionStore versions = new VersionStore();
    private final ContentStore contents = new ContentStore(new RowStore(new SharedRows()), new AdjustmentStore());

    @Override
    public String action() {
        return VersionEvent.ACTION;
    }

    @Override
    public Optional<String> difference(ReadTx tx, Event event) {
        return versions.find(tx, event.room().orElse(""), event.objectNumber())
                .filter(head -> VersionEvent.object(head).equals(event.object()))
                .map(head -> head(head, event).or(() -> content(tx, head)))
                .orElseGet(() -> Optional.of(event.object() + " is not stored"));
    }

    private static Optional<String> head(VersionHead head, Event event) {
        boolean same =
                head.reason().equals(event.reason()) && head.signature().at().equals(event.at());
        return same
                ? event.findDifference(VersionEvent.details(head))
                : Optional.of(event.object() + " has another reason or instant");
    }

    private Optional<String> content(ReadTx tx, VersionHead head) {
        return ContentStore.isSigned(head, contents.stored(tx, head))
                ? Optional.empty()
                : Optional.of(VersionEvent.object(head) + " has rows that do not match its digest");
    }

    @Override
    public Optional<String> unrecorded(ReadTx tx, Set<String> objects) {
        return versions.rooms(tx).stream()
                .flatMap(room -> versions.list(tx, room).stream())
                .map(VersionEvent::object)
                .filter(object -> !objects.contains(object))
                .findFirst()
                .map(object -> object + " is stored, but the ledger has no event of its signature");
    }
}
