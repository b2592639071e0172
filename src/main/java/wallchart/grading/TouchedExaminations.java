package wallchart.grading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import wallchart.chart.ChartContent;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Row;
import wallchart.chart.RowKey;

/** The examinations in which two contents of a chart have different rows. Named adjustments move no prediction. */
final class TouchedExaminations {

    private TouchedExaminations() {}

    static Set<ExaminationKey> of(ChartContent before, ChartContent after) {
        Map<RowKey, Row> left = new HashMap<>();
        before.rows().forEach(row -> left.put(row.key(), row));
        var touched = new HashSet<ExaminationKey>();
        for (var row : after.rows()) {
            if (!row.equals(left.remove(row.key()))) {
                touched.add(row.key().examination());
            }
        }
        left.keySet().forEach(key -> touched.add(key.examination()));
        return touched;
    }
}
