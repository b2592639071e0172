package wallchart.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.ChartCheck;
import wallchart.chart.ChartRules;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.chart.RowReader;
import wallchart.chart.RowReading;
import wallchart.chart.RowReading.Problem;
import wallchart.equipment.Room;

/**
 * A proven technique as somebody wrote it out.
 *
 * @param row present where nothing is wrong with it; its band is of no meaning
 * @param problems each with its place, such as {@code technique/kV}
 */
record ProvenReader(Optional<Row> row, List<Problem> problems) {

    private static final String PLACE = "technique/";

    /** What the plan says of each band. */
    private static final List<String> OF_THE_PLAN =
            List.of("bandFromCm", "bandToCm", "thicknessMethod", "thicknessRate");

    /** Terms that make no row where they are wrong: the author cannot mend them in the change. */
    private static final List<String> TERMS = List.of("bodyPart", "projection", "patientGroup");

    static ProvenReader read(Map<String, String> fields, Room room, ChartRules rules) {
        var problems = new ArrayList<Problem>();
        fields.keySet().stream().sorted().forEach(name -> checkName(name, problems));
        if (fields.getOrDefault("referenceThicknessCm", "").isBlank()) {
            problems.add(new Problem(PLACE + "referenceThicknessCm", "is empty: at which thickness was it proven?"));
        }
        var whole = new HashMap<>(fields);
        whole.putAll(Map.of("bandFromCm", "0", "bandToCm", "100", "thicknessMethod", "fixed", "thicknessRate", ""));
        if (RowReader.read(whole) instanceof RowReading.Refused refused) {
            refused.problems()
                    .forEach(problem -> problems.add(new Problem(PLACE + problem.field(), problem.message())));
            return new ProvenReader(Optional.empty(), problems);
        }
        var row = ((RowReading.Accepted) RowReader.read(whole)).row();
        ChartCheck.check(row, room, rules).stream()
                .filter(finding -> finding.isBlocking() && TERMS.contains(finding.field()))
                .forEach(finding -> problems.add(new Problem(PLACE + finding.field(), finding.reason())));
        return new ProvenReader(problems.isEmpty() ? Optional.of(row) : Optional.empty(), problems);
    }

    private static void checkName(String name, List<Problem> problems) {
        if (OF_THE_PLAN.contains(name)) {
            problems.add(new Problem(PLACE + name, "follows from the plan: leave it out"));
        } else if (!RowFields.NAMES.contains(name)) {
            problems.add(new Problem(PLACE + name, "there is no such field: leave it out, or correct its name"));
        }
    }
}
