package wallchart.chart;

import java.util.List;
import org.jdbi.v3.core.statement.PreparedBatch;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The tables of rows: which row belongs to which versions. */
final class RowStore {

    private static final String SELECT =
            "SELECT chart_row.id, introduced_in, retired_in, ordinal, body_part, projection,"
                    + " patient_group, support, band_from_cm, band_to_cm, reference_cm, measure_at, kv, mas, aec_chambers,"
                    + " aec_density, backup_mas, focal_spot, grid, sid_cm, receptor, field_cm, orientation, added_al_mm,"
                    + " added_cu_mm, target_exposure_index, central_ray_deg, centring, breathing, shielding, thickness_method,"
                    + " thickness_rate, kv_from, kv_to, longest_time_ms, notes"
                    + " FROM chart_row LEFT JOIN chart_row_retired ON chart_row_retired.row_id = chart_row.id"
                    + " WHERE chart_row.room = :room";

    private final SharedRows shared;

    RowStore(SharedRows shared) {
        this.shared = shared;
    }

    /** Rows of a version, in the order people gave. */
    List<Placed<Row>> list(ReadTx tx, String room, int version) {
        return tx.handle()
                .createQuery(SELECT + " AND introduced_in <= :version"
                        + " AND (retired_in IS NULL OR retired_in > :version)"
                        + " ORDER BY ordinal")
                .bind("room", room)
                .bind("version", version)
                .map((rows, context) -> RowColumns.read(rows, shared))
                .list();
    }

    /** Every row that any version of the room had, in the order people gave. */
    List<Lived<Row>> lives(ReadTx tx, String room) {
        return tx.handle()
                .createQuery(SELECT + " ORDER BY ordinal")
                .bind("room", room)
                .map((rows, context) ->
                        Lived.of(rows, RowColumns.read(rows, shared).value()))
                .list();
    }

    void apply(Tx tx, String room, int version, ValidityEdit<Row> edit) {
        if (!edit.retired().isEmpty()) {
            var retire = tx.handle()
                    .prepareBatch("INSERT INTO chart_row_retired (row_id, room, retired_in)"
                            + " VALUES (:id, :room, :version)");
            edit.retired().forEach(id -> retire.bind("id", id)
                    .bind("room", room)
                    .bind("version", version)
                    .add());
            retire.execute();
        }
        if (!edit.introduced().isEmpty()) {
            var insert = insertion(tx);
            for (var row : edit.introduced()) {
                insert.bind("room", room).bind("version", version).bind("ordinal", row.ordinal());
                RowColumns.bind(insert, row.value());
                insert.add();
            }
            insert.execute();
        }
    }

    private static PreparedBatch insertion(Tx tx) {
        return tx.handle()
                .prepareBatch("INSERT INTO chart_row (room, introduced_in, ordinal, body_part, projection,"
                        + " patient_group, support, band_from_cm, band_to_cm, reference_cm, measure_at, kv, mas,"
                        + " aec_chambers, aec_density, backup_mas, focal_spot, grid, sid_cm, receptor, field_cm,"
                        + " orientation, added_al_mm, added_cu_mm, target_exposure_index, central_ray_deg, centring,"
                        + " breathing, shielding, thickness_method, thickness_rate, kv_from, kv_to,"
                        + " longest_time_ms, notes)"
                        + " VALUES (:room, :version, :ordinal, :bodyPart, :projection,"
                        + " :patientGroup, :support, :bandFrom, :bandTo, :reference, :measureAt, :kV, :mAs,"
                        + " :chambers, :density, :backup, :focalSpot, :grid, :sid, :receptor, :field,"
                        + " :orientation, :aluminium, :copper, :target, :angle, :centring,"
                        + " :breathing, :shielding, :method, :rate, :kVFrom, :kVTo,"
                        + " :longestTime, :notes)");
    }
}
