package wallchart.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of events. */
final class EventStore {

    private static final String SELECT =
            "SELECT seq, at, actor, role, action, object, room, reason, details, request_id, prev, hash FROM audit_event ";

    private static final int PAGE = 500;

    /**
     * Waits until nobody else is appending; whoever holds the turn keeps it until their commit.
     *
     * @return why nothing may be appended; empty where it may
     */
    Optional<String> takeTurn(Tx tx) {
        return tx.handle()
                .createQuery("SELECT stopped FROM audit_turn WHERE id = 1 FOR UPDATE")
                .map((rows, context) -> Optional.ofNullable(rows.getString("stopped")))
                .one();
    }

    void stop(Tx tx, String reason) {
        tx.handle()
                .createUpdate("UPDATE audit_turn SET stopped = :reason WHERE id = 1")
                .bind("reason", reason)
                .execute();
    }

    Optional<Event> findNewest(ReadTx tx) {
        return tx.handle()
                .createQuery(SELECT + "ORDER BY seq DESC FETCH FIRST 1 ROW ONLY")
                .map(EventStore::event)
                .findOne();
    }

    Optional<Event> find(ReadTx tx, long seq) {
        return tx.handle()
                .createQuery(SELECT + "WHERE seq = :seq ORDER BY hash FETCH FIRST 1 ROW ONLY")
                .bind("seq", seq)
                .map(EventStore::event)
                .findOne();
    }

    /** All rows there are, also those that no page would show. */
    long count(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COUNT(*) FROM audit_event")
                .mapTo(Long.class)
                .one();
    }

    /** Number of the newest event; 0 of an empty ledger. */
    long newest(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COALESCE(MAX(seq), 0) FROM audit_event")
                .mapTo(Long.class)
                .one();
    }

    /**
     * Hands out the events after a number, by ascending number, as long as somebody wants the next; in pages, so that a ledger of any
     * length takes the same memory.
     */
    void walk(ReadTx tx, long after, Predicate<Event> goOn) {
        var page = page(tx, EventFilter.ALL, after, PAGE);
        while (!page.isEmpty() && page.stream().allMatch(goOn)) {
            page = page(tx, EventFilter.ALL, page.get(page.size() - 1).seq(), PAGE);
        }
    }

    List<Event> page(ReadTx tx, EventFilter filter, long after, int limit) {
        var conditions = new ArrayList<>(List.of("seq > :after"));
        filter.room().ifPresent(room -> conditions.add("room = :room"));
        filter.actor().ifPresent(actor -> conditions.add("actor = :actor"));
        filter.action().ifPresent(action -> conditions.add("action = :action"));
        filter.from().ifPresent(from -> conditions.add("at >= :from"));
        filter.to().ifPresent(to -> conditions.add("at < :to"));
        var query = tx.handle()
                .createQuery(SELECT + "WHERE " + String.join(" AND ", conditions)
                        + " ORDER BY seq FETCH FIRST :limit ROWS ONLY")
                .bind("after", after)
                .bind("limit", limit);
        filter.room().ifPresent(room -> query.bind("room", room));
        filter.actor().ifPresent(actor -> query.bind("actor", actor));
        filter.action().ifPresent(action -> query.bind("action", action));
        filter.from().ifPresent(from -> query.bind("from", from));
        filter.to().ifPresent(to -> query.bind("to", to));
        return query.map(EventStore::event).list();
    }

    void add(Tx tx, Event event) {
        tx.handle()
                .createUpdate("INSERT INTO audit_event"
                        + " (seq, at, actor, role, action, object, room, reason, details, request_id, prev, hash)"
                        + " VALUES (:seq, :at, :actor, :role, :action, :object, :room, :reason, :details, :requestId,"
                        + " :prev, :hash)")
                .bind("seq", event.seq())
                .bind("at", event.at())
                .bind("actor", event.actor())
                .bind("role", event.role())
                .bind("action", event.action())
                .bind("object", event.object())
                .bind("room", event.room())
                .bind("reason", event.reason())
                .bind("details", event.details())
                .bind("requestId", event.requestId())
                .bind("prev", event.prev())
                .bind("hash", event.hash())
                .execute();
    }

    static Event event(ResultSet rows, StatementContext context) throws SQLException {
        return new Event(
                rows.getLong("seq"),
                rows.getObject("at", OffsetDateTime.class).toInstant(),
                rows.getString("actor"),
                rows.getString("role"),
                rows.getString("action"),
                rows.getString("object"),
                Optional.ofNullable(rows.getString("room")),
                rows.getString("reason"),
                rows.getString("details"),
                Optional.ofNullable(rows.getString("request_id")),
                rows.getString("prev"),
                rows.getString("hash"));
    }
}
