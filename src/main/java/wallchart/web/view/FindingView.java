package wallchart.web.view;

import java.util.List;
import wallchart.chart.ChartCheck;
import wallchart.chart.Finding;

/**
 * One thing to be said about a chart.
 *
 * @param level blocking, caution or note
 * @param row the row's key; empty for the chart as a whole
 * @param field as the columns of a chart file are called, or empty
 */
public record FindingView(String level, String row, String field, String reason) {

    /** All that is to be said, and whether any of it keeps the chart from being signed. */
    public record All(boolean blocking, List<FindingView> findings) {
        public static All of(List<Finding> findings) {
            return new All(
                    ChartCheck.blocks(findings),
                    findings.stream().map(FindingView::of).toList());
        }
    }

    public static FindingView of(Finding finding) {
        return new FindingView(finding.severity().slug(), finding.row(), finding.field(), finding.reason());
    }
}
