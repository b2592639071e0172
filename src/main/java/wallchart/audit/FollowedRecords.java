package wallchart.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wallchart.audit.Verification.Doubtful;
import wallchart.store.ReadTx;
import wallchart.store.StoreException;

/** The walks of all kinds of records along the ledger: each is handed the events that speak of its records. */
final class FollowedRecords {

    private static final String RECORD = "the record";

    private final List<RecordWalk> walks = new ArrayList<>();
    private final Map<String, List<RecordWalk>> byAction = new HashMap<>();

    FollowedRecords(ReadTx tx, List<RecordCheck> records) {
        records.forEach(record -> {
            var walk = record.begin(tx);
            walks.add(walk);
            record.actions().forEach(action -> byAction.computeIfAbsent(action, first -> new ArrayList<>())
                    .add(walk));
        });
    }

    /** What of the records differs from the events, whatever is to be said about the events themselves. */
    static Optional<Doubtful> findDifference(ReadTx tx, List<RecordCheck> records) {
        var followed = new FollowedRecords(tx, records);
        var found = new ArrayList<Doubtful>();
        new EventStore().walk(tx, Long.MIN_VALUE, event -> {
            followed.take(event).ifPresent(found::add);
            return found.isEmpty();
        });
        return found.stream().findFirst().or(followed::end);
    }

    /** Takes the next event; says what its record says otherwise. */
    Optional<Doubtful> take(Event event) {
        return byAction.getOrDefault(event.action(), List.of()).stream()
                .flatMap(walk -> told(RECORD, () -> walk.difference(event)).stream())
                .findFirst()
                .map(what -> new Doubtful(event.seq(), "event " + event.seq() + " and its record differ: " + what));
    }

    /** After the newest event. */
    Optional<Doubtful> end() {
        return walks.stream()
                .flatMap(walk -> told(RECORD, walk::unrecorded).stream())
                .findFirst()
                .map(what -> new Doubtful(0, what));
    }

    /** What does not fit, also where something cannot even be read any more. */
    static Optional<String> told(String name, Supplier<Optional<String>> check) {
        try {
            return check.get();
        } catch (RuntimeException unreadable) { // whatever comes of a value that no program of ours has written
            if (StoreException.isOfDatabase(unreadable)) {
                throw unreadable;
            }
            return Optional.of(name + " cannot be read: " + unreadable.getMessage());
        }
    }
}
