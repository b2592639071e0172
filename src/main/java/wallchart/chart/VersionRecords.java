package wallchart.chart;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import java.util.Set;
import wallchart.audit.Event;
import wallchart.audit.RecordCheck;
import wallchart.store.ReadTx;

/** Holds every stored version against the event of its signature, and its rows against the digest that was signed. */
final class VersionRecords implements RecordCheck {

    private static final JsonMapper MAPPER = new JsonMapper();

    private final VersionStore versions = new VersionStore();
    private final RowStore rows = new RowStore(new SharedRows());
    private final AdjustmentStore adjustments = new AdjustmentStore();

    @Override
    public String action() {
        return VersionEvent.ACTION;
    }

    @Override
    public Optional<String> difference(ReadTx tx, Event event) {
        return versions.list(tx, event.room().orElse("")).stream()
                .filter(head -> VersionEvent.object(head).equals(event.object()))
                .findFirst()
                .map(head -> head(head, event).or(() -> content(tx, head)))
                .orElseGet(() -> Optional.of(event.object() + " is not stored"));
    }

    private static Optional<String> head(VersionHead head, Event event) {
        if (!head.reason().equals(event.reason()) || !head.signature().at().equals(event.at())) {
            return Optional.of(event.object() + " has another reason or instant");
        }
        try {
            var details = MAPPER.readTree(event.details());
            return VersionEvent.details(head).entrySet().stream()
                    .filter(said -> !String.valueOf(said.getValue())
                            .equals(details.path(said.getKey()).asText()))
                    .map(said -> event.object() + " has another " + said.getKey())
                    .sorted()
                    .findFirst();
        } catch (JsonProcessingException notJson) {
            return Optional.of(event.object() + " has an event that is no JSON");
        }
    }

    private Optional<String> content(ReadTx tx, VersionHead head) {
        var content = new ChartContent(
                rows.list(tx, head.room(), head.number()).stream()
                        .map(Placed::value)
                        .toList(),
                adjustments.list(tx, head.room(), head.number()).stream()
                        .map(Placed::value)
                        .toList());
        return ContentDigest.of(head.room(), head.number(), content).equals(head.digest())
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
