package wallchart.chart;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of versions. */
final class VersionStore {

    /** The unique constraint that lets one of two rivals win. */
    static final String NUMBER_TAKEN = "chart_version_number_unique";

    private static final String SELECT = "SELECT room, number, digest, title, reason, in_force_from, review_due,"
            + " signed_by, printed_name, role, signed_at, meaning FROM chart_version";

    /** Rooms that have a version, by ascending id. */
    List<String> rooms(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT DISTINCT room FROM chart_version ORDER BY room")
                .mapTo(String.class)
                .list();
    }

    /** Every version there is. */
    List<VersionNumber> numbers(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT room, number FROM chart_version ORDER BY room, number")
                .map((rows, context) -> new VersionNumber(rows.getString("room"), rows.getInt("number")))
                .list();
    }

    /** Heads of one room, oldest first. */
    List<VersionHead> list(ReadTx tx, String room) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room ORDER BY number")
                .bind("room", room)
                .map(VersionStore::head)
                .list();
    }

    Optional<VersionHead> find(ReadTx tx, String room, int number) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room AND number = :number")
                .bind("room", room)
                .bind("number", number)
                .map(VersionStore::head)
                .findOne();
    }

    Optional<VersionHead> findNewest(ReadTx tx, String room) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room ORDER BY number DESC FETCH FIRST 1 ROW ONLY")
                .bind("room", room)
                .map(VersionStore::head)
                .findOne();
    }

    /** The name that is printed beside a signature; empty for an unknown account. */
    /**
     * Empty where that person has another role by now, or may not sign in any more. Holds the account until the commit: what is signed
     * stands in the ledger before the loss of the role, or not at all.
     */
    Optional<String> findPrintedName(Tx tx, long person, String role) {
        return tx.handle()
                .createQuery("SELECT printed_name FROM person"
                        + " WHERE id = :id AND role = :role AND disabled_at IS NULL FOR UPDATE")
                .bind("id", person)
                .bind("role", role)
                .mapTo(String.class)
                .findOne();
    }

    void add(Tx tx, VersionHead head) {
        var signature = head.signature();
        tx.handle()
                .createUpdate("INSERT INTO chart_version (room, number, digest, title, reason, in_force_from,"
                        + " review_due, signed_by, printed_name, role, signed_at, meaning)"
                        + " VALUES (:room, :number, :digest, :title, :reason, :inForceFrom,"
                        + " :reviewDue, :signedBy, :printedName, :role, :signedAt, :meaning)")
                .bind("room", head.room())
                .bind("number", head.number())
                .bind("digest", head.digest())
                .bind("title", head.title())
                .bind("reason", head.reason())
                .bind("inForceFrom", head.inForceFrom())
                .bind("reviewDue", head.reviewDue())
                .bind("signedBy", signature.personId())
                .bind("printedName", signature.printedName())
                .bind("role", signature.role())
                .bind("signedAt", signature.at())
                .bind("meaning", signature.meaning())
                .execute();
    }

    private static VersionHead head(ResultSet rows, StatementContext context) throws SQLException {
        return new VersionHead(
                rows.getString("room"),
                rows.getInt("number"),
                rows.getString("digest"),
                rows.getString("title"),
                rows.getString("reason"),
                instant(rows, "in_force_from"),
                rows.getObject("review_due", LocalDate.class),
                new Signature(
                        rows.getLong("signed_by"),
                        rows.getString("printed_name"),
                        rows.getString("role"),
                        instant(rows, "signed_at"),
                        rows.getString("meaning")));
    }

    private static Instant instant(ResultSet rows, String column) throws SQLException {
        return rows.getObject(column, OffsetDateTime.class).toInstant();
    }
}
