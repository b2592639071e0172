package wallchart.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wallchart.store.Actor;
import wallchart.store.Database;

/** The ledger as a physicist reads it: pages, proof, export, and the review they record. Safe for use by many threads. */
public final class AuditTrail {

    /** The most events of one page. */
    public static final int LONGEST_PAGE = 500;

    private final Database database;
    private final Checkpoints checkpoints;
    private final List<RecordCheck> records;
    private final LedgerCheck check;
    private final EventStore events = new EventStore();
    private final TurnStore turn = new TurnStore();
    private final EventPages pages = new EventPages();
    private final Ledger ledger = new Ledger();

    /** @param records the kinds of signed records that are held against their events */
    public AuditTrail(Database database, Checkpoints checkpoints, List<RecordCheck> records) {
        this.database = database;
        this.checkpoints = checkpoints;
        this.records = List.copyOf(records);
        this.check = new LedgerCheck(records);
    }

    /**
     * The next events after a number, by ascending number.
     *
     * @param after the last number of the page before; 0 for the first page
     * @param limit 1 to {@link #LONGEST_PAGE}
     */
    public List<Event> page(EventFilter filter, long after, int limit) {
        requireLimit(limit);
        return database.read(tx -> pages.page(tx, filter, after, limit));
    }

    /**
     * The next events of a page in that order.
     *
     * @param after the last number of the page before; 0 for the first page
     * @param limit 1 to {@link #LONGEST_PAGE}
     */
    public List<Event> page(EventFilter filter, EventOrder order, long after, int limit) {
        if (order == EventOrder.OLDEST) {
            return page(filter, after, limit);
        }
        requireLimit(limit);
        long before = after == 0 ? Long.MAX_VALUE : after;
        return database.read(tx -> pages.pageBack(tx, filter, before, limit));
    }

    private static void requireLimit(int limit) {
        if (limit < 1 || limit > LONGEST_PAGE) {
            throw new IllegalArgumentException("limit is " + limit + ": 1 to " + LONGEST_PAGE);
        }
    }

    /** One event by its number, with the text that its hash is taken of and its neighbours. */
    public Optional<WholeEvent> findWhole(long seq) {
        return database.read(tx -> events.find(tx, seq)
                .map(event -> new WholeEvent(
                        event,
                        LedgerEncoding.findText(event),
                        events.find(tx, seq - 1).map(Event::seq),
                        events.find(tx, seq + 1).map(Event::seq))));
    }

    /** One event by its number. */
    public Optional<Event> find(long seq) {
        return database.read(tx -> events.find(tx, seq));
    }

    /** Records a review as an event of its own, with the head of the ledger that the physicist had before them. */
    public Event review(Actor by, Review review) {
        return database.write(by, tx -> {
            var head = events.findNewest(tx)
                    .orElseThrow(() -> new IllegalStateException("an empty ledger is not reviewed"));
            return ledger.append(tx, review.act(head));
        });
    }

    /** Re-derives the whole ledger and holds it against the checkpoints and the records it speaks of. */
    public Verification verify() {
        return database.read(tx -> check.verify(tx, checkpoints));
    }

    /** The newest signed statement of the ledger's head, as it is put on paper; empty where there is none, or none that its key signed. */
    public Optional<Checkpoint> findNewestCheckpoint() {
        return checkpoints.findNewest();
    }

    /** Why nothing is appended at present; empty while the ledger goes on. */
    public Optional<String> findStop() {
        return database.read(turn::findStop);
    }

    /**
     * Goes on with a ledger whose chain or checkpoints are in doubt, or that was stopped, after checking it; the doubt stays on
     * record. No other process may keep this ledger meanwhile.
     *
     * @param by the medical physicist
     * @param reason why it may go on, in their words, at least {@link Review#LEAST_VISIBLE} visible characters
     */
    public Reopening resume(Actor by, String reason) {
        return new LedgerReopening(database, checkpoints, records).reopen(by, reason);
    }

    /**
     * Hands out the ledger line by line, as one state of the database: each line is an event's canonical JSON (RFC 8785), hash
     * included. Whoever takes the member {@code hash} out of a line and hashes what is left gets that hash.
     */
    public void export(Consumer<String> line) {
        database.<Optional<Object>>read(tx -> {
            events.walk(tx, 0, event -> {
                line.accept(LedgerEncoding.line(event));
                return true;
            });
            return Optional.empty();
        });
    }
}
