package wallchart.planning;

import java.util.ArrayList;
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

    /** All rows that the chart would have. */
    static List<Row> after(ChartContent before, List<ProposedRow> proposed, List<RowKey> withdrawn) {
        var rows = new ArrayList<Row>();
        before.rows().stream()
                .filter(row -> !withdrawn.contains(row.key()))
                .filter(row ->
                        proposed.stream().noneMatch(other -> other.row().key().equals(row.key())))
                .forEach(rows::add);
        proposed.forEach(row -> rows.add(row.row()));
        return rows;
    }

    static boolean overlap(RowKey one, RowKey other) {
        return one.examination().equals(other.examination()) && one.band().overlaps(other.band());
    }
}
