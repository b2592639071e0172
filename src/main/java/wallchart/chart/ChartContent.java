package wallchart.chart;

import java.util.List;

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

    public static final ChartContent EMPTY = new ChartContent(List.of(), List.of());
}
