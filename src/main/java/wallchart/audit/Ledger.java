package wallchart.audit;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import wallchart.store.ReadTx;
import wallchart.store.Sha256;
import wallchart.store.Tx;

/** Where every business act is entered, in its own transaction. Stateless and safe for use by many threads. */
public final class Ledger {

    private final EventStore events = new EventStore();
    private final TurnStore turn = new TurnStore();

    /**
     * Enters an act: by {@code tx.by()}, at {@code tx.at()}. Takes the ledger's turn until the commit, so call it last in a
     * transaction that does other work.
     *
     * @throws LedgerStopped if the ledger is in doubt; the act must not happen then
     */
    public Event append(Tx tx, Act act) {
        turn.take(tx).ifPresent(reason -> {
            throw new LedgerStopped(reason);
        });
        var newest = events.findNewest(tx);
        var unhashed = new Event(
                newest.map(Event::seq).orElse(0L) + 1,
                tx.at(),
                tx.by().name(),
                tx.by().role(),
                act.action(),
                act.object(),
                act.room(),
                act.reason(),
                LedgerEncoding.details(act.details()),
                tx.by().requestId(),
                newest.map(Event::hash).orElse(Event.NONE_BEFORE),
                "");
        var text = LedgerEncoding.text(unhashed);
        findTextProblem(text).ifPresent(problem -> {
            throw new IllegalArgumentException("an act " + problem);
        });
        var event = unhashed.withHash(Sha256.hex(text));
        events.add(tx, event);
        return event;
    }

    /** What keeps a text out of the ledger: half a surrogate pair has no bytes of its own, so no hash in any language. */
    static Optional<String> findTextProblem(String text) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text)
                ? Optional.empty()
                : Optional.of("holds half a character: leave it out");
    }

    /** The events of one kind in one room, oldest first. */
    public List<Event> list(ReadTx tx, String room, String action) {
        var equal = new LinkedHashMap<String, String>();
        equal.put("room", room);
        equal.put("action", action);
        return events.page(tx, equal, 0, Long.MAX_VALUE, Integer.MAX_VALUE);
    }

    /** What was done in a room to one object, such as {@code change/7}, oldest first. */
    public List<Event> about(ReadTx tx, String room, String object) {
        var equal = new LinkedHashMap<String, String>();
        equal.put("room", room);
        equal.put("object", object);
        return events.page(tx, equal, 0, Long.MAX_VALUE, Integer.MAX_VALUE);
    }

    /** From now on nothing is appended, on any node. */
    public void stop(Tx tx, String reason) {
        turn.stop(tx, reason);
    }
}
