package wallchart.print;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.statement.StatementContext;
import wallchart.chart.BodyRegion;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The tables of printed sheets, and of those that were taken down. */
final class SheetStore {

    private static final String SELECT = "SELECT id, room, version, digest, equipment, paper, patient_group, region,"
            + " printed_at, printed_by, printed_name, role, taken_at, taken_by"
            + " FROM printed_sheet LEFT JOIN sheet_taken_down ON sheet = id";
    private static final String HANGING = " WHERE room = :room AND version <> :version AND taken_at IS NULL";
    private static final String NEWEST = " ORDER BY printed_at DESC, id FETCH FIRST :most ROWS ONLY";

    void add(Tx tx, PrintedSheet sheet) {
        tx.handle()
                .createUpdate(
                        "INSERT INTO printed_sheet (id, room, version, digest, equipment, paper, patient_group, region,"
                                + " printed_at, printed_by, printed_name, role) VALUES (:id, :room, :version, :digest, :equipment,"
                                + " :paper, :group, :region, :at, :by, :name, :role)")
                .bind("id", sheet.number().text())
                .bind("room", sheet.room())
                .bind("version", sheet.version())
                .bind("digest", sheet.digest())
                .bind("equipment", sheet.equipment())
                .bind("paper", sheet.paper().slug())
                .bind("group", sheet.selection().patientGroup().orElse(null))
                .bind("region", sheet.selection().region().map(BodyRegion::slug).orElse(null))
                .bind("at", sheet.printedAt())
                .bind("by", sheet.printedBy())
                .bind("name", sheet.printedName())
                .bind("role", sheet.role())
                .execute();
    }

    void takeDown(Tx tx, SheetNumber number) {
        tx.handle()
                .createUpdate("INSERT INTO sheet_taken_down (sheet, taken_at, taken_by) VALUES (:id, :at, :by)")
                .bind("id", number.text())
                .bind("at", tx.at())
                .bind("by", tx.by().name())
                .execute();
    }

    Optional<PrintedSheet> find(ReadTx tx, SheetNumber number) {
        return tx.handle()
                .createQuery(SELECT + " WHERE id = :id")
                .bind("id", number.text())
                .map(SheetStore::sheet)
                .findOne();
    }

    /** The newest of all rooms, newest first. */
    List<PrintedSheet> newest(ReadTx tx, int most) {
        return tx.handle()
                .createQuery(SELECT + NEWEST)
                .bind("most", most)
                .map(SheetStore::sheet)
                .list();
    }

    /** The newest of one room, newest first. */
    List<PrintedSheet> newest(ReadTx tx, String room, int most) {
        return tx.handle()
                .createQuery(SELECT + " WHERE room = :room" + NEWEST)
                .bind("room", room)
                .bind("most", most)
                .map(SheetStore::sheet)
                .list();
    }

    /** Sheets of another version than that which nobody has taken down, newest first. */
    List<PrintedSheet> hangingOfOthers(ReadTx tx, String room, int version, int most) {
        return tx.handle()
                .createQuery(SELECT + HANGING + NEWEST)
                .bind("room", room)
                .bind("version", version)
                .bind("most", most)
                .map(SheetStore::sheet)
                .list();
    }

    /** How many of them there are. */
    int countHangingOfOthers(ReadTx tx, String room, int version) {
        return tx.handle()
                .createQuery("SELECT count(*) FROM printed_sheet LEFT JOIN sheet_taken_down ON sheet = id" + HANGING)
                .bind("room", room)
                .bind("version", version)
                .mapTo(Integer.class)
                .one();
    }

    /** How many were printed. */
    int count(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT count(*) FROM printed_sheet")
                .mapTo(Integer.class)
                .one();
    }

    /** How many were printed of one room. */
    int count(ReadTx tx, String room) {
        return tx.handle()
                .createQuery("SELECT count(*) FROM printed_sheet WHERE room = :room")
                .bind("room", room)
                .mapTo(Integer.class)
                .one();
    }

    private static PrintedSheet sheet(ResultSet rows, StatementContext context) throws SQLException {
        var taken = rows.getObject("taken_at", OffsetDateTime.class);
        return new PrintedSheet(
                new SheetNumber(rows.getString("id")),
                rows.getString("room"),
                rows.getInt("version"),
                rows.getString("digest"),
                rows.getInt("equipment"),
                PaperSize.find(rows.getString("paper")).orElseThrow(),
                new Selection(
                        Optional.ofNullable(rows.getString("patient_group")),
                        Optional.ofNullable(rows.getString("region")).flatMap(BodyRegion::find)),
                rows.getObject("printed_at", OffsetDateTime.class).toInstant(),
                rows.getString("printed_by"),
                rows.getString("printed_name"),
                rows.getString("role"),
                taken == null
                        ? Optional.empty()
                        : Optional.of(new PrintedSheet.TakenDown(taken.toInstant(), rows.getString("taken_by"))));
    }

    /** Every line of both tables, column by column, as the ledger's check reads them: whatever may stand there by now. */
    List<SheetRecords.Stored> records(ReadTx tx) {
        var all = new ArrayList<SheetRecords.Stored>();
        all.addAll(tx.handle()
                .createQuery(
                        "SELECT id, room, version, digest, equipment, paper, patient_group AS \"patientGroup\", region,"
                                + " printed_at AS \"printedAt\", printed_by AS \"by\", printed_name AS \"printedName\", role"
                                + " FROM printed_sheet")
                .map((rows, context) -> stored(
                        rows,
                        SheetEvents.PRINTED,
                        "id",
                        "room",
                        "version",
                        "digest",
                        "equipment",
                        "paper",
                        "patientGroup",
                        "region",
                        "printedAt",
                        "by",
                        "printedName",
                        "role"))
                .list());
        all.addAll(tx.handle()
                .createQuery(
                        "SELECT sheet AS \"id\", taken_at AS \"takenAt\", taken_by AS \"by\" FROM sheet_taken_down")
                .map((rows, context) -> stored(rows, SheetEvents.TAKEN_DOWN, "id", "takenAt", "by"))
                .list());
        return all;
    }

    private static SheetRecords.Stored stored(ResultSet rows, String action, String id, String... names)
            throws SQLException {
        Map<String, String> columns = new TreeMap<>();
        for (var name : names) {
            var text = name.endsWith("At") ? instant(rows, name) : rows.getString(name);
            if (text != null) {
                columns.put(name, text);
            }
        }
        return new SheetRecords.Stored(action + " of " + SheetEvents.object(rows.getString(id)), columns);
    }

    private static String instant(ResultSet rows, String name) throws SQLException {
        var at = rows.getObject(name, OffsetDateTime.class);
        return at == null ? null : at.toInstant().toString();
    }
}
