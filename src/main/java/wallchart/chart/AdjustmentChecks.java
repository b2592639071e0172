package wallchart.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** Whether the named adjustments can be told apart and signed. */
final class AdjustmentChecks {

    /** The longest text of each field; the columns of the database are as wide. */
    static final Map<String, Integer> MOST_CHARACTERS = Map.of("label", 80, "notes", 400);

    private AdjustmentChecks() {}

    static List<Finding> check(List<Adjustment> adjustments) {
        var findings = new ArrayList<Finding>();
        var names = new HashSet<String>();
        for (var adjustment : adjustments) {
            if (!names.add(adjustment.name())) {
                findings.add(Finding.blocking(
                        "", "name", "adjustment " + adjustment.name() + " stands more than once: keep one of them"));
            }
            checkTexts(adjustment, findings);
        }
        return findings;
    }

    private static void checkTexts(Adjustment adjustment, List<Finding> findings) {
        var fields = RowFields.of(adjustment);
        RowFields.ADJUSTMENT_NAMES.stream().filter(MOST_CHARACTERS::containsKey).forEach(name -> Texts.problem(
                        fields.get(name), MOST_CHARACTERS.get(name))
                .ifPresent(problem -> findings.add(
                        Finding.blocking("", name, "adjustment " + adjustment.name() + ": the text " + problem))));
    }
}
