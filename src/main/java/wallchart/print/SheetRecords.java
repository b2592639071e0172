package wallchart.print;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wallchart.audit.Event;
import wallchart.audit.RecordCheck;
import wallchart.audit.RecordWalk;
import wallchart.store.ReadTx;

/** Holds the register of printed sheets against the events of printing and taking down, every column of every line. */
final class SheetRecords implements RecordCheck {

    private static final List<String> SAID =
            List.of("version", "digest", "equipment", "paper", "patientGroup", "region", "printedAt", "printedName");

    @Override
    public Set<String> actions() {
        return Set.of(SheetEvents.PRINTED, SheetEvents.TAKEN_DOWN);
    }

    @Override
    public RecordWalk begin(ReadTx tx) {
        return new Walk(tx);
    }

    private static final class Walk implements RecordWalk {

        private final ReadTx tx;
        private final SheetStore store = new SheetStore();
        private final Map<String, Map<String, String>> told = new HashMap<>();

        Walk(ReadTx tx) {
            this.tx = tx;
        }

        @Override
        public Optional<String> difference(Event event) {
            var key = event.action() + " of " + event.object();
            boolean first = told.put(key, columns(event)) == null;
            if (!first) {
                return Optional.of(event.object() + " has a second " + event.action());
            }
            boolean orphan = event.action().equals(SheetEvents.TAKEN_DOWN)
                    && !told.containsKey(SheetEvents.PRINTED + " of " + event.object());
            return orphan
                    ? Optional.of(event.object() + " was taken down, but the ledger has no event of its printing")
                    : Optional.empty();
        }

        private static Map<String, String> columns(Event event) {
            var columns = new TreeMap<String, String>();
            columns.put("by", event.actor());
            if (event.action().equals(SheetEvents.PRINTED)) {
                columns.put("role", event.role());
                event.room().ifPresent(room -> columns.put("room", room));
                SAID.forEach(name -> event.detail(name).ifPresent(text -> columns.put(name, text)));
            } else {
                columns.put("takenAt", event.at().toString());
            }
            return columns;
        }

        @Override
        public Optional<String> unrecorded() {
            var missing = new HashMap<>(told);
            for (var stored : store.records(tx)) {
                var said = missing.remove(stored.key());
                if (said == null) {
                    return Optional.of(stored.key() + " is stored, but the ledger has no such event of it");
                }
                if (!said.equals(stored.columns())) {
                    return Optional.of(stored.key() + " is not stored as its event says");
                }
            }
            return missing.keySet().stream().sorted().findFirst().map(key -> key + " is not stored");
        }
    }

    /** One line of a table as it is stored, an empty column left out. */
    record Stored(String key, Map<String, String> columns) {}
}
