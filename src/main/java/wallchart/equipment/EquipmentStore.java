package wallchart.equipment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.store.CanonicalJson;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of equipment revisions. */
final class EquipmentStore {

    private static final String SELECT =
            "SELECT revision, document, digest, in_force_from, installed_by FROM equipment_revision";

    private final SharedEquipment shared = new SharedEquipment();

    void add(Tx tx, String room, int revision, CanonicalJson document) {
        tx.handle()
                .createUpdate("INSERT INTO equipment_revision"
                        + " (room, revision, document, digest, in_force_from, installed_by)"
                        + " VALUES (:room, :revision, :document, :digest, :at, :by)")
                .bind("room", room)
                .bind("revision", revision)
                .bind("document", document.text())
                .bind("digest", document.digest())
                .bind("at", tx.at())
                .bind("by", tx.by().name())
                .execute();
    }

    /** Rooms that have equipment, by ascending id. */
    List<String> rooms(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT DISTINCT room FROM equipment_revision ORDER BY room")
                .mapTo(String.class)
                .list();
    }

    /** Every revision there is, as the ledger names it, also of a room that no query would find. */
    List<String> objects(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT room, revision FROM equipment_revision ORDER BY room, revision")
                .map((rows, context) -> RevisionEvent.object(rows.getString("room"), rows.getInt("revision")))
                .list();
    }

    /** Revisions of one room, oldest first. */
    List<RoomRevision> list(ReadTx tx, String room) {
        return listAfter(tx, room, 0);
    }

    /** Only those of a higher number. */
    List<RoomRevision> listAfter(ReadTx tx, String room, int revision) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room AND revision > :revision ORDER BY revision")
                .bind("room", room)
                .bind("revision", revision)
                .map(this::revision)
                .list();
    }

    Optional<RoomRevision> find(ReadTx tx, String room, int revision) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room AND revision = :revision")
                .bind("room", room)
                .bind("revision", revision)
                .map(this::revision)
                .findOne();
    }

    /** The document of a revision as it was written; refuses one that does not match its digest any more. */
    Optional<EquipmentDocument> findDocument(ReadTx tx, String room, int revision) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room AND revision = :revision")
                .bind("room", room)
                .bind("revision", revision)
                .map((rows, context) -> EquipmentEncoding.document(sound(rows)))
                .findOne();
    }

    Optional<RoomRevision> findNewest(ReadTx tx, String room) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room ORDER BY revision DESC FETCH FIRST 1 ROW ONLY")
                .bind("room", room)
                .map(this::revision)
                .findOne();
    }

    Optional<RoomRevision> findInForce(ReadTx tx, String room, Instant at) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room AND in_force_from <= :at"
                        + " ORDER BY revision DESC FETCH FIRST 1 ROW ONLY")
                .bind("room", room)
                .bind("at", at)
                .map(this::revision)
                .findOne();
    }

    private RoomRevision revision(ResultSet rows, StatementContext context) throws SQLException {
        int number = rows.getInt("revision");
        var reading = EquipmentReader.readStored(EquipmentEncoding.document(sound(rows)));
        if (reading instanceof EquipmentReading.Accepted accepted) {
            return new RoomRevision(
                    number,
                    rows.getString("digest"),
                    rows.getObject("in_force_from", OffsetDateTime.class).toInstant(),
                    rows.getString("installed_by"),
                    shared.of(accepted.room()));
        }
        throw new IllegalStateException("stored equipment, revision " + number + ", is no possible room any more: "
                + ((EquipmentReading.Refused) reading).problems());
    }

    private static String sound(ResultSet rows) throws SQLException {
        var document = rows.getString("document");
        if (!new CanonicalJson(document).digest().equals(rows.getString("digest"))) {
            throw new IllegalStateException("stored equipment, revision " + rows.getInt("revision")
                    + ", is not what was installed any more: it does not match its digest; restore a backup");
        }
        return document;
    }
}
