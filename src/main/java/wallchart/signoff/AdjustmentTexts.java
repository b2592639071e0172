package wallchart.signoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import wallchart.chart.Adjustment;
import wallchart.chart.AdjustmentReader;
import wallchart.chart.AdjustmentReader.Reading;
import wallchart.chart.RowFields;
import wallchart.chart.RowReading.Problem;

/**
 * All named adjustments as their author wrote them.
 *
 * @param problems each with its place, such as {@code adjustments/0/addKv}
 */
record AdjustmentTexts(List<Adjustment> adjustments, List<Problem> problems) {

    /** More than staff can tell apart, and far fewer than their column holds. Common practice, no source. */
    private static final int MOST = 100;

    /** What their column keeps. */
    private static final int LONGEST = 65_000;

    static AdjustmentTexts read(List<Map<String, String>> texts) {
        if (texts.size() > MOST) {
            return new AdjustmentTexts(
                    List.of(),
                    List.of(new Problem(
                            "adjustments", "are " + texts.size() + ", at most " + MOST + " are kept: leave some out")));
        }
        var read = new ArrayList<Adjustment>();
        var problems = new ArrayList<Problem>();
        var names = new HashSet<String>();
        for (int i = 0; i < texts.size(); i++) {
            var place = "adjustments/" + i + "/";
            problems.addAll(RowTexts.unknown(texts.get(i), RowFields.ADJUSTMENT_NAMES, place));
            if (AdjustmentReader.read(texts.get(i)) instanceof Reading.Accepted accepted) {
                read.add(accepted.adjustment());
                if (!names.add(accepted.adjustment().name())) {
                    problems.add(new Problem(place + "name", "stands twice: once each"));
                }
            } else if (AdjustmentReader.read(texts.get(i)) instanceof Reading.Refused refused) {
                refused.problems().forEach(p -> problems.add(new Problem(place + p.field(), p.message())));
            }
        }
        if (EditTexts.of(read).length() > LONGEST) {
            problems.add(new Problem("adjustments", "are longer than is kept, all together: shorten their notes"));
        }
        return new AdjustmentTexts(read, problems);
    }
}
