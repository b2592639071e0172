package wallchart.intake;

import java.util.List;
import wallchart.chart.ChartContent;
import wallchart.chart.Finding;

/**
 * What a chart file held.
 *
 * @param content the rows and adjustments that could be read
 * @param findings what could not be read, each at {@code line 14} and its column; all of them blocking
 */
public record ChartReading(ChartContent content, List<Finding> findings) {

    public ChartReading {
        findings = List.copyOf(findings);
    }

    /** Whether everything could be read. */
    public boolean isComplete() {
        return findings.isEmpty();
    }
}
