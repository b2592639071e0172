package wallchart.chart;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The tables of named adjustments: which adjustment belongs to which versions. */
final class AdjustmentStore {

    private static final String SELECT = "SELECT chart_adjustment.id, introduced_in, retired_in, ordinal, name, label,"
            + " add_kv, times_mas, notes FROM chart_adjustment LEFT JOIN chart_adjustment_retired"
            + " ON chart_adjustment_retired.adjustment_id = chart_adjustment.id WHERE chart_adjustment.room = :room";

    /** Adjustments of a version, in the order people gave. */
    List<Placed<Adjustment>> list(ReadTx tx, String room, int version) {
        return tx.handle()
                .createQuery(SELECT + " AND introduced_in <= :version"
                        + " AND (retired_in IS NULL OR retired_in > :version)"
                        + " ORDER BY ordinal")
                .bind("room", room)
                .bind("version", version)
                .map((rows, context) -> new Placed<>(rows.getLong("id"), rows.getLong("ordinal"), read(rows)))
                .list();
    }

    /** Every adjustment that any version of the room had, in the order people gave. */
    List<Lived<Adjustment>> lives(ReadTx tx, String room) {
        return tx.handle()
                .createQuery(SELECT + " ORDER BY ordinal")
                .bind("room", room)
                .map((rows, context) -> Lived.of(rows, read(rows)))
                .list();
    }

    private static Adjustment read(ResultSet rows) throws SQLException {
        var kV = rows.getBigDecimal("add_kv");
        Adjustment.Effect effect = kV != null
                ? new Adjustment.AddKilovolts(kV)
                : new Adjustment.MultiplyCurrentTime(rows.getBigDecimal("times_mas"));
        return new Adjustment(rows.getString("name"), rows.getString("label"), effect, rows.getString("notes"));
    }

    void apply(Tx tx, String room, int version, ValidityEdit<Adjustment> edit) {
        for (long id : edit.retired()) {
            tx.handle()
                    .createUpdate("INSERT INTO chart_adjustment_retired (adjustment_id, room, retired_in)"
                            + " VALUES (:id, :room, :version)")
                    .bind("id", id)
                    .bind("room", room)
                    .bind("version", version)
                    .execute();
        }
        edit.introduced().forEach(entry -> insert(tx, room, version, entry));
    }

    private static void insert(Tx tx, String room, int version, ValidityEdit.Introduced<Adjustment> entry) {
        var adjustment = entry.value();
        tx.handle()
                .createUpdate("INSERT INTO chart_adjustment"
                        + " (room, introduced_in, ordinal, name, label, add_kv, times_mas, notes)"
                        + " VALUES (:room, :version, :ordinal, :name, :label, :addKV, :timesMAs, :notes)")
                .bind("room", room)
                .bind("version", version)
                .bind("ordinal", entry.ordinal())
                .bind("name", adjustment.name())
                .bind("label", adjustment.label())
                .bind("addKV", adjustment.effect() instanceof Adjustment.AddKilovolts added ? added.kV() : null)
                .bind(
                        "timesMAs",
                        adjustment.effect() instanceof Adjustment.MultiplyCurrentTime times ? times.factor() : null)
                .bind("notes", adjustment.notes())
                .execute();
    }
}
