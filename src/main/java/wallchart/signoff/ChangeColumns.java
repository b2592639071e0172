package wallchart.signoff;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.signoff.Change.Declined;
import wallchart.signoff.Change.Drafting;
import wallchart.signoff.Change.Returned;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.signoff.Change.Withdrawn;

/** How a change stands in its columns. */
final class ChangeColumns {

    private ChangeColumns() {}

    /** The value of every column but the id, by its name; null where the state has none. */
    static Map<String, Object> values(Change change) {
        var columns = new LinkedHashMap<String, Object>();
        putHead(columns, change.head());
        columns.put("state", change.state().slug());
        columns.put("submitted_at", change instanceof Submitted submitted ? submitted.submittedAt() : null);
        putConcurrence(columns, concurrence(change).orElse(null));
        put(columns, "decided", "decided_reason", decision(change).orElse(null));
        columns.put("signed_version", change instanceof Signed signed ? signed.version() : null);
        var review = change instanceof Signed signed ? signed.secondReview() : Optional.<SecondReview>empty();
        columns.put("second_review_due", review.map(SecondReview::due).orElse(null));
        put(
                columns,
                "reviewed",
                "review_findings",
                review.flatMap(SecondReview::done).orElse(null));
        return columns;
    }

    private static void putHead(Map<String, Object> columns, ChangeHead head) {
        columns.put("room", head.room());
        columns.put("title", head.title());
        columns.put("reason", head.reason());
        columns.put("base_version", head.baseVersion());
        columns.put("kind", head.kind().slug());
        columns.put("reverts_to", head.revertsTo().orElse(null));
        columns.put("author", head.author().personId());
        columns.put("author_name", head.author().printedName());
        columns.put("opened_at", head.openedAt());
        columns.put("revision", head.revision());
    }

    private static void putConcurrence(Map<String, Object> columns, Concurrence given) {
        columns.put("concurred_by", given == null ? null : given.by().personId());
        columns.put("concurred_name", given == null ? null : given.by().printedName());
        columns.put("concurred_at", given == null ? null : given.at());
        columns.put("concurred_impact", given == null ? null : given.impactDigest());
        columns.put("concurred_on", given == null ? null : given.onVersion());
    }

    private static void put(Map<String, Object> columns, String prefix, String words, Decision decision) {
        columns.put(prefix + "_by", decision == null ? null : decision.by().personId());
        columns.put(prefix + "_name", decision == null ? null : decision.by().printedName());
        columns.put(prefix + "_at", decision == null ? null : decision.at());
        columns.put(words, decision == null ? null : decision.reason());
    }

    private static Optional<Concurrence> concurrence(Change change) {
        return switch (change.state()) {
            case SUBMITTED -> ((Submitted) change).concurrence();
            case SIGNED -> ((Signed) change).concurrence();
            default -> Optional.empty();
        };
    }

    private static Optional<Decision> decision(Change change) {
        return switch (change.state()) {
            case RETURNED -> Optional.of(((Returned) change).decision());
            case SIGNED -> Optional.of(((Signed) change).decision());
            case DECLINED -> Optional.of(((Declined) change).decision());
            case WITHDRAWN -> Optional.of(((Withdrawn) change).decision());
            case DRAFTING, SUBMITTED -> Optional.empty();
        };
    }

    static Change read(ResultSet rows, StatementContext context) throws SQLException {
        var head = head(rows);
        var decision = decision(rows, "decided", "decided_reason");
        return switch (ChangeState.find(rows.getString("state")).orElseThrow()) {
            case DRAFTING -> new Drafting(head);
            case SUBMITTED ->
                new Submitted(head, findInstant(rows, "submitted_at").orElseThrow(), concurrence(rows));
            case RETURNED -> new Returned(head, decision.orElseThrow());
            case SIGNED ->
                new Signed(
                        head,
                        rows.getInt("signed_version"),
                        decision.orElseThrow(),
                        concurrence(rows),
                        secondReview(rows));
            case DECLINED -> new Declined(head, decision.orElseThrow());
            case WITHDRAWN -> new Withdrawn(head, decision.orElseThrow());
        };
    }

    /**
     * The same; a column holds something where the state says something, and nothing where it does not.
     *
     * @throws IllegalStateException where one does otherwise: the table was changed by hand
     */
    static Change readWhole(ResultSet rows, StatementContext context) throws SQLException {
        var change = read(rows, context);
        for (var column : values(change).entrySet()) {
            if ((column.getValue() == null) != (rows.getObject(column.getKey()) == null)) {
                throw new IllegalStateException("change " + change.id() + " is "
                        + change.state().slug() + ", which its " + column.getKey() + " does not fit; restore a backup");
            }
        }
        return change;
    }

    private static ChangeHead head(ResultSet rows) throws SQLException {
        return new ChangeHead(
                rows.getLong("id"),
                rows.getString("room"),
                rows.getString("title"),
                rows.getString("reason"),
                rows.getInt("base_version"),
                ChangeKind.find(rows.getString("kind")).orElseThrow(),
                Optional.ofNullable(rows.getObject("reverts_to", Integer.class)),
                new Signatory(rows.getLong("author"), rows.getString("author_name")),
                findInstant(rows, "opened_at").orElseThrow(),
                rows.getInt("revision"));
    }

    private static Optional<Concurrence> concurrence(ResultSet rows) throws SQLException {
        var at = findInstant(rows, "concurred_at");
        return at.isEmpty()
                ? Optional.empty()
                : Optional.of(new Concurrence(
                        new Signatory(rows.getLong("concurred_by"), rows.getString("concurred_name")),
                        at.get(),
                        rows.getString("concurred_impact"),
                        rows.getInt("concurred_on")));
    }

    private static Optional<SecondReview> secondReview(ResultSet rows) throws SQLException {
        var done = decision(rows, "reviewed", "review_findings");
        return findInstant(rows, "second_review_due").map(due -> new SecondReview(due, done));
    }

    private static Optional<Decision> decision(ResultSet rows, String prefix, String words) throws SQLException {
        var at = findInstant(rows, prefix + "_at");
        return at.isEmpty()
                ? Optional.empty()
                : Optional.of(new Decision(
                        new Signatory(rows.getLong(prefix + "_by"), rows.getString(prefix + "_name")),
                        at.get(),
                        rows.getString(words)));
    }

    private static Optional<Instant> findInstant(ResultSet rows, String column) throws SQLException {
        return Optional.ofNullable(rows.getObject(column, OffsetDateTime.class)).map(OffsetDateTime::toInstant);
    }
}
