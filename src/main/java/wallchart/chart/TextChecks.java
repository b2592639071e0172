package wallchart.chart;

import java.util.Map;

/** Whether the words of a row fit on the chart and can be signed. */
final class TextChecks {

    /** The longest text of each field; the columns of the database are as wide. */
    static final Map<String, Integer> MOST_CHARACTERS = Map.of(
            "bodyPart", 16,
            "projection", 32,
            "patientGroup", 32,
            "grid", 32,
            "receptor", 32,
            "measureAt", 200,
            "centring", 400,
            "breathing", 200,
            "shielding", 200,
            "notes", 400);

    private TextChecks() {}

    static void check(RowFindings findings) {
        var fields = RowFields.of(findings.row());
        RowFields.NAMES.stream().filter(MOST_CHARACTERS::containsKey).forEach(name -> Texts.problem(
                        fields.get(name), MOST_CHARACTERS.get(name))
                .ifPresent(problem -> findings.blocking(name, "the text " + problem)));
    }
}
