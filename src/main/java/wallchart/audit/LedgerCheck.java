package wallchart.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wallchart.audit.Verification.Doubtful;
import wallchart.audit.Verification.Sound;
import wallchart.store.ReadTx;
import wallchart.store.StoreException;

/**
 * Derives the chain of events anew from the rows, and holds it against the checkpoints and against the records it speaks of.
 * Takes no more memory for a longer ledger, but for a few words for each record that its events speak of.
 *
 * <p>What it cannot show: well-made events added by somebody with write access after the newest checkpoint, which is a second
 * old while the service runs; and anything by somebody who has the private key too.
 */
public final class LedgerCheck {

    private final EventStore rows = new EventStore();
    private final List<RecordCheck> records;

    /** @param records the kinds of records that are held against their events */
    public LedgerCheck(List<RecordCheck> records) {
        this.records = List.copyOf(records);
    }

    /** Checks everything. */
    public Verification verify(ReadTx tx, Checkpoints checkpoints) {
        var reading = checkpoints.read();
        if (reading instanceof Checkpoints.Reading.Signed signed) {
            return new Walk(tx, Optional.empty(), signed.checkpoints(), records).run();
        }
        return new Doubtful(0, ((Checkpoints.Reading.Doubted) reading).what());
    }

    /** Checks what came after a checkpoint, and that its own event is still the one it was signed for. */
    Verification verifySince(ReadTx tx, Optional<Checkpoint> checkpoint) {
        if (checkpoint.isEmpty()) {
            return new Walk(tx, Optional.empty(), List.of(), List.of()).run();
        }
        var signed = checkpoint.get();
        var event = rows.find(tx, signed.seq());
        if (event.isEmpty()) {
            return missing(signed, rows.newest(tx));
        }
        return event.get().hash().equals(signed.hash())
                ? new Walk(tx, event, List.of(signed), List.of()).run()
                : another(signed);
    }

    private static Doubtful missing(Checkpoint signed, long newest) {
        return new Doubtful(
                Math.min(signed.seq(), newest + 1),
                "the ledger ends with event " + newest + ", but at " + signed.at()
                        + " it was signed that there is event " + signed.seq()
                        + ": events were removed, or an older database was restored");
    }

    private static Doubtful another(Checkpoint signed) {
        return new Doubtful(
                signed.seq(),
                "event " + signed.seq() + " is not the one that was signed for at " + signed.at()
                        + ": the ledger was written anew");
    }

    /** One check from some event on. */
    private final class Walk {

        private static final String RECORD = "the record";

        private final ReadTx tx;
        private final Chain chain;
        private final Deque<Checkpoint> ahead;
        private final List<RecordWalk> walks = new ArrayList<>();
        private final Map<String, List<RecordWalk>> byAction = new HashMap<>();
        private final boolean whole;
        private Optional<Checkpoint> passed = Optional.empty();
        private Optional<Doubtful> found = Optional.empty();

        Walk(ReadTx tx, Optional<Event> from, Collection<Checkpoint> checkpoints, List<RecordCheck> records) {
            this.tx = tx;
            this.chain = new Chain(from);
            this.ahead = new ArrayDeque<>(checkpoints);
            this.whole = from.isEmpty();
            records.forEach(record -> {
                var walk = record.begin(tx);
                walks.add(walk);
                record.actions().forEach(action -> byAction.computeIfAbsent(action, first -> new ArrayList<>())
                        .add(walk));
            });
            if (!whole) {
                passed = Optional.of(ahead.pop());
            }
        }

        Verification run() {
            var unreadable = told("event " + (chain.seq() + 1) + " or one after it", this::walk);
            return found.or(() -> unreadable.map(what -> new Doubtful(chain.seq() + 1, what)))
                    .or(this::end)
                    .<Verification>map(doubt -> doubt)
                    .orElseGet(() -> new Sound(chain.seq(), chain.head(), passed, chain.notes()));
        }

        private Optional<String> walk() {
            rows.walk(tx, chain.seq(), event -> {
                found = take(event);
                return found.isEmpty();
            });
            return Optional.empty();
        }

        private Optional<Doubtful> take(Event event) {
            return chain.follow(event).or(() -> compare(event)).or(() -> record(event));
        }

        private Optional<Doubtful> compare(Event event) {
            if (ahead.isEmpty() || ahead.peek().seq() != event.seq()) {
                return Optional.empty();
            }
            var signed = ahead.pop();
            passed = Optional.of(signed);
            return signed.hash().equals(event.hash()) ? Optional.empty() : Optional.of(another(signed));
        }

        private Optional<Doubtful> record(Event event) {
            return byAction.getOrDefault(event.action(), List.of()).stream()
                    .flatMap(walk -> told(RECORD, () -> walk.difference(event)).stream())
                    .findFirst()
                    .map(what -> new Doubtful(event.seq(), "event " + event.seq() + " and its record differ: " + what));
        }

        /** What does not fit, also where the record cannot even be read any more. */
        private Optional<String> told(String name, Supplier<Optional<String>> check) {
            try {
                return check.get();
            } catch (RuntimeException unreadable) { // whatever comes of a value that no program of ours has written
                if (StoreException.isOfDatabase(unreadable)) {
                    throw unreadable;
                }
                return Optional.of(name + " cannot be read: " + unreadable.getMessage());
            }
        }

        private Optional<Doubtful> end() {
            if (!ahead.isEmpty()) {
                return Optional.of(missing(ahead.peek(), chain.seq()));
            }
            if (whole && rows.count(tx) != chain.seq()) {
                return Optional.of(new Doubtful(
                        0,
                        "the ledger holds rows that are no events: " + rows.count(tx) + " rows, " + chain.seq()
                                + " events"));
            }
            return walks.stream()
                    .flatMap(walk -> told(RECORD, walk::unrecorded).stream())
                    .findFirst()
                    .map(what -> new Doubtful(0, what));
        }
    }
}
