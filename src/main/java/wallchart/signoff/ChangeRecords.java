package wallchart.signoff;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallchart.audit.Event;
import wallchart.audit.RecordCheck;
import wallchart.audit.RecordWalk;
import wallchart.chart.Charts;
import wallchart.store.ReadTx;

/** Holds every change, with all its edits, against the events of its steps: none is missing, and the newest says how it stands. */
final class ChangeRecords implements RecordCheck {

    @Override
    public Set<String> actions() {
        return Set.of(
                ChangeEvents.OPENED,
                ChangeEvents.EDITED,
                ChangeEvents.SUBMITTED,
                ChangeEvents.RETURNED,
                ChangeEvents.DECLINED,
                ChangeEvents.WITHDRAWN,
                ChangeEvents.CONCURRED,
                ChangeEvents.REVIEWED,
                Charts.SIGNED);
    }

    @Override
    public RecordWalk begin(ReadTx tx) {
        return new Walk(tx);
    }

    /** Where the events have left a change so far. */
    private record Standing(int revision, String record) {}

    private static final class Walk implements RecordWalk {

        private final ReadTx tx;
        private final ChangeStore changes = new ChangeStore();
        private final EditStore edits = new EditStore();
        private final Map<String, Standing> told = new HashMap<>();

        Walk(ReadTx tx) {
            this.tx = tx;
        }

        @Override
        public Optional<String> difference(Event event) {
            if (!event.action().equals(Charts.SIGNED)) {
                return follow(event.object(), event, ChangeEvents.REVISION, ChangeEvents.RECORD);
            }
            return event.detail(ChangeEvents.CHANGE)
                    .flatMap(id ->
                            follow("change/" + id, event, ChangeEvents.SIGNED_REVISION, ChangeEvents.SIGNED_RECORD));
        }

        private Optional<String> follow(String change, Event event, String revision, String record) {
            var before = Optional.ofNullable(told.get(change));
            int next = before.map(standing -> standing.revision() + 1).orElse(1);
            told.put(change, new Standing(next, event.detail(record).orElse("")));
            if (!event.detail(revision).equals(Optional.of(String.valueOf(next)))) {
                return Optional.of(change + " has no event of its revision " + next + " before this one");
            }
            return event.detail(ChangeEvents.RECORD_BEFORE).equals(before.map(Standing::record))
                    ? Optional.empty()
                    : Optional.of(change + " was not as its events had left it when this step was taken");
        }

        @Override
        public Optional<String> unrecorded() {
            var missing = new HashMap<>(told);
            for (var change : changes.all(tx)) {
                var object = "change/" + change.id();
                var said = missing.remove(object);
                if (said == null) {
                    return Optional.of(object + " is stored, but the ledger has no event of it");
                }
                var stored = ChangeEvents.record(change, edits.list(tx, change.id()), edits.numbers(tx, change.id()));
                if (!stored.equals(said.record())) {
                    return Optional.of(object + " is not as its events left it");
                }
            }
            return missing.keySet().stream()
                    .sorted()
                    .findFirst()
                    .map(object -> object + " is not stored")
                    .or(this::findStray);
        }

        private Optional<String> findStray() {
            return edits.changes(tx).stream()
                    .filter(id -> !told.containsKey("change/" + id))
                    .findFirst()
                    .map(id -> "edits of change/" + id + " are stored, but the ledger has no event of it");
        }
    }
}
