package wallchart.chart;

import java.util.List;
import java.util.Optional;

/**
 * What a version says: rows and named adjustments. May be wrong; {@link ChartCheck} finds out.
 *
 * @param rows in the order people gave them
 * @param adjustments in the order people gave them
 */
public record ChartContent(List<Row> rows, List<Adjustment> adjustments) {

    public ChartContent {
        rows = List.copyOf(rows);
        adjustments = List.copyOf(adjustments);
    }

    /** The row of that key. */
    public Optional<Row> findRow(RowKey key) {
        return rows.stream().filter(row -> row.key().equals(key)).findFirst();
    }

    public static final ChartContent EMPTY = new ChartContent(List.of(), List.of());
}
