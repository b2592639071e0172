package wallchart.planning;

import java.util.List;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.chart.RowKey;

/** Which rows of a chart have to go for others to come. */
final class Overlaps {

    private Overlaps() {}

    /** Rows of the chart in the way of proposed ones; one with the very key of a proposed row is amended and stays. */
    static List<RowKey> withdrawn(ChartContent before, List<ProposedRow> proposed) {
        return before.rows().stream()
                .map(Row::key)
                .filter(key -> proposed.stream().map(row -> row.row().key()).noneMatch(key::equals))
                .filter(key ->
                        proposed.stream().anyMatch(row -> overlap(key, row.row().key())))
                .toList();
    }

    static boolean overlap(RowKey one, RowKey other) {
        return one.examination().equals(other.examination()) && one.band().overlaps(other.band());
    }
}
