package wallchart.chart;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.Query;
import wallchart.quantity.Decimals;
import wallchart.store.CanonicalJson;
import wallchart.store.ReadTx;
import wallchart.store.Sha256;

/**
 * The digest over everything that a version wrote into the tables of rows and adjustments: what it introduced and what it retired,
 * every column, also those that no answer shows.
 *
 * <p>SHA-256 over lines of UTF-8 text, each ended by a line feed: the tables in the order of {@link #TABLES}, in each the rows by
 * ascending id. A line is the canonical JSON (RFC 8785) of one row: {@code table} and every column by its name, all as texts,
 * decimals in plain digits without trailing zeros; a column without a value is left out, so a column added later changes no digest.
 */
final class RecordsDigestStore {

    /** Read in one look at a whole department, which may have more rows than memory. */
    private static final int ROWS_AT_ONCE = 1_000;

    /** Of a version that wrote nothing. */
    static final String OF_NOTHING = digest(Sha256.begin());

    static final List<Table> TABLES = List.of(
            new Table(
                    "chart_row",
                    "id",
                    "introduced_in",
                    "ordinal, body_part, projection, patient_group, support, band_from_cm, band_to_cm, reference_cm,"
                            + " measure_at, kv, mas, aec_chambers, aec_density, backup_mas, focal_spot, grid, sid_cm,"
                            + " receptor, field_cm, orientation, added_al_mm, added_cu_mm, target_exposure_index,"
                            + " central_ray_deg, centring, breathing, shielding, thickness_method, thickness_rate,"
                            + " kv_from, kv_to, longest_time_ms, notes"),
            new Table("chart_row_retired", "row_id", "retired_in", ""),
            new Table("chart_adjustment", "id", "introduced_in", "ordinal, name, label, add_kv, times_mas, notes"),
            new Table("chart_adjustment_retired", "adjustment_id", "retired_in", ""));

    /**
     * One of the tables.
     *
     * @param version the column with the number of the version that wrote the row
     * @param others columns besides id, room and version
     */
    record Table(String name, String id, String version, String others) {

        List<String> columns() {
            var first = id + ", room, " + version;
            return List.of((others.isEmpty() ? first : first + ", " + others).split(", "));
        }

        private String select() {
            return "SELECT " + String.join(", ", columns()) + " FROM " + name;
        }

        private byte[] line(ResultSet rows) throws SQLException {
            var fields = new TreeMap<String, String>(Map.of("table", name));
            for (var column : columns()) {
                var value = rows.getObject(column);
                if (value != null) {
                    fields.put(
                            column, value instanceof BigDecimal decimal ? Decimals.plain(decimal) : value.toString());
                }
            }
            return (CanonicalJson.of(fields).text() + "\n").getBytes(StandardCharsets.UTF_8);
        }
    }

    /** Of one version. */
    String of(ReadTx tx, VersionNumber version) {
        var running = Sha256.begin();
        for (var table : TABLES) {
            var condition = " WHERE room = :room AND " + table.version() + " = :number ORDER BY " + table.id();
            var query = tx.handle()
                    .createQuery(table.select() + condition)
                    .bind("room", version.room())
                    .bind("number", version.number());
            each(query, rows -> running.update(table.line(rows)));
        }
        return digest(running);
    }

    /** Of every version that wrote something, also of one that does not exist; each table is read once. */
    Map<VersionNumber, String> all(ReadTx tx) {
        var running = new HashMap<VersionNumber, MessageDigest>();
        for (var table : TABLES) {
            var query = tx.handle()
                    .createQuery(table.select() + " ORDER BY " + table.id())
                    .setFetchSize(ROWS_AT_ONCE);
            each(query, rows -> running.computeIfAbsent(
                            new VersionNumber(rows.getString("room"), rows.getInt(table.version())),
                            first -> Sha256.begin())
                    .update(table.line(rows)));
        }
        return running.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> digest(entry.getValue())));
    }

    private interface Reading {
        void row(ResultSet rows) throws SQLException;
    }

    private static void each(Query query, Reading reading) {
        query.map((rows, context) -> {
                    reading.row(rows);
                    return true;
                })
                .forEach(done -> {});
    }

    private static String digest(MessageDigest running) {
        return "sha256:" + Sha256.hex(running);
    }
}
