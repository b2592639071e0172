package wallchart.people;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wallchart.audit.Event;
import wallchart.audit.RecordWalk;

/**
 * Follows rows that change: each event changes the record that it speaks of, and after the newest the rows must be as the events
 * left them.
 */
final class ReplayedRecords implements RecordWalk {

    private final Function<Replay, Optional<String>> rule;
    private final Supplier<List<StoredRecord>> stored;
    private final Map<String, StoredRecord> replayed = new HashMap<>();
    private boolean digested;

    /**
     * @param rule what an event does to its record; answers why it cannot
     * @param stored the rows as they are now
     */
    ReplayedRecords(Function<Replay, Optional<String>> rule, Supplier<List<StoredRecord>> stored) {
        this.rule = rule;
        this.stored = stored;
    }

    @Override
    public Optional<String> difference(Event event) {
        return rule.apply(new Replay(event));
    }

    /** One event and the record that it speaks of. */
    final class Replay {

        private final Event event;

        private Replay(Event event) {
            this.event = event;
        }

        Event event() {
            return event;
        }

        /** The record begins with this event. */
        Optional<String> begin(Map<String, String> columns) {
            return replayed.putIfAbsent(event.object(), new StoredRecord(event.object(), columns)) == null
                    ? withDigest()
                    : Optional.of(event.object() + " has a second " + event.action());
        }

        /** The record goes on, if it says what the event says of it. */
        Optional<String> goOn(Map<String, String> said, Function<StoredRecord, StoredRecord> change) {
            var before = replayed.get(event.object());
            if (before == null) {
                return Optional.of(event.object() + " has a " + event.action() + " before its first event");
            }
            replayed.put(event.object(), change.apply(before));
            return said.entrySet().stream()
                    .filter(entry -> !before.find(entry.getKey()).equals(Optional.of(entry.getValue())))
                    .findFirst()
                    .map(entry -> event.object() + " had another " + entry.getKey() + " before its " + event.action());
        }

        /** The stored hash from here on; older events do not say it, but after the first that does, all do. */
        Optional<String> withDigest() {
            var digest = event.detail(AccountEvents.HASH_DIGEST);
            replayed.computeIfPresent(
                    event.object(), (object, record) -> record.with(AccountEvents.HASH_DIGEST, digest));
            if (digest.isEmpty() && digested) {
                return Optional.of(event.object() + " has a " + event.action() + " without " + AccountEvents.HASH_DIGEST
                        + ", though an earlier event has one");
            }
            digested |= digest.isPresent();
            return Optional.empty();
        }
    }

    @Override
    public Optional<String> unrecorded() {
        var missing = new HashMap<>(replayed);
        for (var row : stored.get()) {
            var said = missing.remove(row.object());
            if (said == null) {
                return Optional.of(row.object() + " is stored, but the ledger has no event of it");
            }
            var different = comparable(row, said).findDifference(said);
            if (different.isPresent()) {
                return Optional.of(row.object() + " has another " + different.get() + " than its events say");
            }
        }
        return missing.keySet().stream().sorted().findFirst().map(object -> object + " is not stored");
    }

    /** Without the digest of its hash, where no event says what that was. */
    private static StoredRecord comparable(StoredRecord row, StoredRecord said) {
        return said.find(AccountEvents.HASH_DIGEST).isPresent()
                ? row
                : row.with(AccountEvents.HASH_DIGEST, Optional.empty());
    }
}
