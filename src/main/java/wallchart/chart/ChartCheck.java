package wallchart.chart;

import java.util.ArrayList;
import java.util.List;
import wallchart.equipment.Room;

/** Everything that is wrong, or worth a look, about a chart in a room. Stateless, pure, thread-safe. */
public final class ChartCheck {

    private ChartCheck() {}

    /** The findings, rows in the order of the chart, then what concerns several rows, then the adjustments. */
    public static List<Finding> check(ChartContent content, Room room, ChartRules rules) {
        var findings = new ArrayList<Finding>();
        for (var row : content.rows()) {
            findings.addAll(check(row, room, rules));
        }
        findings.addAll(BandChecks.check(content.rows()));
        findings.addAll(AdjustmentChecks.check(content.adjustments()));
        return List.copyOf(findings);
    }

    /** What can be said about one row without its neighbours. */
    public static List<Finding> check(Row row, Room room, ChartRules rules) {
        var findings = new RowFindings(row);
        TermChecks.check(findings, rules);
        TextChecks.check(findings);
        CompletenessChecks.check(findings, rules);
        PlaceChecks.check(findings, room);
        SettingChecks.check(findings, room);
        LoadingChecks.check(findings, room);
        AecChecks.check(findings, room);
        return List.copyOf(findings.found());
    }

    /** Whether anything among the findings keeps a chart from being published. */
    public static boolean blocks(List<Finding> findings) {
        return findings.stream().anyMatch(Finding::isBlocking);
    }
}
