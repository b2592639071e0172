package wallchart.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;

/** How a {@link StoredRecord} stands in the columns of its table. */
final class StoredRecordColumns {

    private StoredRecordColumns() {}

    /**
     * The row under the cursor.
     *
     * @param hash the column of which only the digest is compared
     * @param columns all others but the id
     */
    static StoredRecord read(ResultSet rows, String object, String hash, String... columns) throws SQLException {
        var record = new StoredRecord(object, Map.of())
                .with(AccountEvents.HASH_DIGEST, AccountEvents.digestOf(rows.getString(hash)));
        for (var column : columns) {
            record = record.with(column, text(rows, column));
        }
        return record;
    }

    private static Optional<String> text(ResultSet rows, String column) throws SQLException {
        return column.endsWith("_at")
                ? Optional.ofNullable(rows.getObject(column, OffsetDateTime.class))
                        .map(at -> at.toInstant().toString())
                : Optional.ofNullable(rows.getString(column));
    }
}
