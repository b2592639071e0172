package wallchart.signoff;

import java.util.List;
import wallchart.chart.ChartContent;

/**
 * A change with what it would make of the chart: of the newest version while it may still be signed, of the version it was made on
 * once it is decided.
 *
 * @param change the change
 * @param edits what it does; none for a revert, which brings back a version as it was
 * @param onVersion the version it is applied to
 * @param before the chart as it stands in that version
 * @param after the chart as it would stand, or as it was signed
 * @param conflicts keys of rows, or {@code adjustments}, or {@code chart}, that others moved since the author saw them
 */
public record Proposal(
        Change change, Edits edits, int onVersion, ChartContent before, ChartContent after, List<String> conflicts) {

    /** How a conflict over the named adjustments is called. */
    public static final String ADJUSTMENTS = "adjustments";

    /** How a conflict over a whole chart is called. */
    public static final String CHART = "chart";

    public Proposal {
        conflicts = List.copyOf(conflicts);
    }
}
