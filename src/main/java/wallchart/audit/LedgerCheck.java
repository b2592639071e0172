package wallchart.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Verification.Doubtful;
import wallchart.audit.Verification.Sound;
import wallchart.store.ReadTx;

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

        private final ReadTx tx;
        private final Deque<Checkpoint> ahead;
        private final FollowedRecords followed;
        private final boolean whole;
        private final List<String> notes = new ArrayList<>();
        private Chain chain;
        private long taken;
        private Optional<Checkpoint> since = Optional.empty();
        private Optional<Checkpoint> passed = Optional.empty();
        private Optional<Doubtful> found = Optional.empty();

        Walk(ReadTx tx, Optional<Event> from, Collection<Checkpoint> checkpoints, List<RecordCheck> records) {
            this.tx = tx;
            this.chain = new Chain(from);
            this.ahead = new ArrayDeque<>(checkpoints);
            this.whole = from.isEmpty();
            this.followed = new FollowedRecords(tx, records);
            if (!whole) {
                passed = Optional.of(ahead.pop());
                since = passed;
            }
        }

        Verification run() {
            var unreadable = FollowedRecords.told("event " + (chain.seq() + 1) + " or one after it", this::walk);
            return found.or(() -> unreadable.map(what -> new Doubtful(chain.seq() + 1, what)))
                    .or(this::end)
                    .<Verification>map(doubt -> doubt)
                    .orElseGet(this::sound);
        }

        private Sound sound() {
            notes.addAll(chain.notes());
            return new Sound(chain.seq(), chain.head(), since, passed, notes);
        }

        private Optional<String> walk() {
            findResumption().ifPresent(this::before);
            if (found.isEmpty()) {
                rows.walk(tx, chain.seq(), this::goOn);
            }
            return Optional.empty();
        }

        /** The resumption that the file of checkpoints begins with; its own hash is looked at with the chain after it. */
        private Optional<Resumption> findResumption() {
            return Optional.ofNullable(ahead.peek())
                    .flatMap(first -> rows.find(tx, first.seq())
                            .filter(event -> event.hash().equals(first.hash())))
                    .flatMap(Resumption::find);
        }

        /** Events whose own chain was in doubt are held against what stood there when that was acknowledged. */
        private void before(Resumption resumption) {
            var standing = new Standing();
            long end = resumption.event().seq();
            rows.walk(tx, Long.MIN_VALUE, event -> event.seq() < end && goOn(event, standing));
            found = found.or(() -> resumption.findDifference(standing).map(what -> new Doubtful(end, what)));
            chain = new Chain(standing.last());
            notes.addAll(standing.notes());
            notes.add(resumption.note());
        }

        private boolean goOn(Event event, Standing standing) {
            standing.take(event);
            taken++;
            found = followed.take(event);
            return found.isEmpty();
        }

        private boolean goOn(Event event) {
            taken++;
            found = chain.follow(event).or(() -> compare(event)).or(() -> followed.take(event));
            return found.isEmpty();
        }

        private Optional<Doubtful> compare(Event event) {
            if (ahead.isEmpty() || ahead.peek().seq() != event.seq()) {
                return Optional.empty();
            }
            var signed = ahead.pop();
            passed = Optional.of(signed);
            since = since.or(() -> passed);
            return signed.hash().equals(event.hash()) ? Optional.empty() : Optional.of(another(signed));
        }

        private Optional<Doubtful> end() {
            if (!ahead.isEmpty()) {
                return Optional.of(missing(ahead.peek(), chain.seq()));
            }
            if (whole && rows.count(tx) != taken) {
                return Optional.of(new Doubtful(
                        0,
                        "the ledger holds rows that are no events: " + rows.count(tx) + " rows, " + taken + " events"));
            }
            return followed.end();
        }
    }
}
