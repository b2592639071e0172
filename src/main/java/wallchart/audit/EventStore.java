package wallchart.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of events. */
final class EventStore {

    private static final String SELECT =
            "SELECT seq, at, actor, role, action, object, room, reason, details, request_id, prev, hash FROM audit_event ";

    private static final int PAGE = 500;

    private static final Instant BEFORE_ALL = Instant.parse("0001-01-01T00:00:00Z");

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
        var page = page(tx, Map.of(), after, Long.MAX_VALUE, PAGE);
        while (!page.isEmpty() && page.stream().allMatch(goOn)) {
            page = page(tx, Map.of(), page.get(page.size() - 1).seq(), Long.MAX_VALUE, PAGE);
        }
    }

    /**
     * Events after a number and up to another, by ascending number.
     *
     * @param equal columns with what must stand in them, in the order room, actor, action; each combination has an index
     */
    List<Event> page(ReadTx tx, Map<String, String> equal, long after, long upTo, int limit) {
        return page(tx, equal, after, upTo, limit, "");
    }

    /** The same by descending number. */
    List<Event> pageBack(ReadTx tx, Map<String, String> equal, long after, long upTo, int limit) {
        return page(tx, equal, after, upTo, limit, " DESC");
    }

    private static List<Event> page(
            ReadTx tx, Map<String, String> equal, long after, long upTo, int limit, String direction) {
        var conditions = equal.keySet().stream()
                .map(column -> column + " = :" + column + " AND ")
                .collect(Collectors.joining());
        // the columns stand in the order too, or H2 would sort all events that have these values
        var order =
                equal.keySet().stream().map(column -> column + direction + ", ").collect(Collectors.joining());
        return tx.handle()
                .createQuery(SELECT + "WHERE " + conditions + "seq > :after AND seq <= :upTo ORDER BY " + order + "seq"
                        + direction + " FETCH FIRST :limit ROWS ONLY")
                .bindMap(equal)
                .bind("after", after)
                .bind("upTo", upTo)
                .bind("limit", limit)
                .map(EventStore::event)
                .list();
    }

    /** Earliest and latest instant of the events of one stretch of the ledger. */
    record Stretch(long number, Instant earliest, Instant latest) {}

    /**
     * Stretches of that many events, the first with number 0, by ascending number.
     *
     * @param from number of the first that is wanted
     */
    List<Stretch> stretches(ReadTx tx, int length, long from) {
        // where all are wanted, H2 reads the index of instants alone if it is asked by instant: five times as fast as
        // the rows
        var condition = from == 0 ? "at >= :start" : "at >= :start AND seq > " + from * length;
        return tx.handle()
                .createQuery("SELECT (seq - 1) / " + length + " AS stretch, MIN(at) AS earliest, MAX(at) AS latest"
                        + " FROM audit_event WHERE " + condition + " GROUP BY (seq - 1) / " + length
                        + " ORDER BY stretch")
                .bind("start", BEFORE_ALL)
                .map((rows, context) ->
                        new Stretch(rows.getLong("stretch"), instant(rows, "earliest"), instant(rows, "latest")))
                .list();
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
                instant(rows, "at"),
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

    private static Instant instant(ResultSet rows, String column) throws SQLException {
        return rows.getObject(column, OffsetDateTime.class).toInstant();
    }
}
