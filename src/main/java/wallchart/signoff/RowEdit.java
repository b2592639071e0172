package wallchart.signoff;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.chart.RowKey;

/**
 * What a change does to one row.
 *
 * @param kind adds, amends or withdraws
 * @param row the row as it is to be; of a withdrawal the row that goes
 * @param basedOn the version its author saw
 */
public record RowEdit(Kind kind, Row row, int basedOn) {

    /** What is done to the row. */
    public enum Kind {
        ADD,
        AMEND,
        WITHDRAW;

        /** The word in the database, the record and the interface. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Kind ofSlug(String slug) {
            return Arrays.stream(values())
                    .filter(kind -> kind.slug().equals(slug))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no edit is a \"" + slug + "\"; restore a backup"));
        }
    }

    public RowKey key() {
        return row.key();
    }

    /** The row that will stand under the key; empty for a withdrawal. */
    public Optional<Row> wanted() {
        return kind == Kind.WITHDRAW ? Optional.empty() : Optional.of(row);
    }

    RowEdit on(int version) {
        return new RowEdit(kind, row, version);
    }
}
