package wallchart.audit;

import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.util.Optional;
import wallchart.store.CanonicalJson;
import wallchart.store.ReadTx;

/**
 * Re-derives the chain from the rows as they are stored, one after the other, in memory that does not grow with the ledger. Finds
 * what was changed, removed, inserted or moved; a tail that was cut off, or a whole chain that was written anew, it cannot find: the
 * head has to be held against one that was kept elsewhere.
 */
final class LedgerCheck {

    private final EventStore events = new EventStore();
    private long seq;
    private String head = Event.NONE_BEFORE;
    private Optional<Verification.Doubtful> doubt = Optional.empty();

    private LedgerCheck() {}

    static Verification check(ReadTx tx) {
        return new LedgerCheck().run(tx);
    }

    private Verification run(ReadTx tx) {
        events.walk(tx, this::follows);
        return doubt.<Verification>map(found -> found).orElseGet(() -> new Verification.Sound(seq, head));
    }

    private boolean follows(Event event) {
        doubt = doubt(event).map(what -> new Verification.Doubtful(Math.min(event.seq(), seq + 1), what));
        seq = event.seq();
        head = event.hash();
        return doubt.isEmpty();
    }

    private Optional<String> doubt(Event event) {
        if (event.seq() != seq + 1) {
            return Optional.of("event " + (seq + 1) + " is missing: after " + seq + " stands " + event.seq());
        }
        if (!event.prev().equals(head)) {
            return Optional.of("event " + event.seq() + " does not follow the event before it: it names another hash");
        }
        if (!isWhole(event)) {
            return Optional.of("event " + event.seq() + " does not say what was entered: its hash differs");
        }
        return Optional.empty();
    }

    private static boolean isWhole(Event event) {
        try {
            return CanonicalJson.of(event.details()).text().equals(event.details())
                    && LedgerEncoding.hash(event).equals(event.hash());
        } catch (UncheckedIOException | IllegalArgumentException | DateTimeException unreadable) {
            return false;
        }
    }
}
