package wallchart.chart;

import java.util.Comparator;
import java.util.Map;
import java.util.Set;

/** Whether a row says all that the rule sets chosen by the site ask of a technique chart. */
final class CompletenessChecks {

    private static final Set<String> OF_AEC_ROWS = Set.of("aecChambers", "aecDensity", "backupMAs");

    private CompletenessChecks() {}

    static void check(RowFindings findings, ChartRules rules) {
        var fields = RowFields.of(findings.row());
        rules.requiredFields().stream().sorted(Comparator.naturalOrder()).forEach(set -> {
            requireFields(findings, fields, set);
            if (set.asksForAge()) {
                requireAge(findings, rules, set);
            }
        });
    }

    private static void requireFields(RowFindings findings, Map<String, String> fields, RequiredFields set) {
        boolean automatic = findings.setting().control() instanceof ExposureControl.Automatic;
        set.fields().stream()
                .filter(name -> automatic || !OF_AEC_ROWS.contains(name))
                .filter(name -> fields.get(name).isBlank())
                .forEach(name -> findings.blocking(
                        name,
                        "is empty, but " + set.citation() + " asks for it on the chart: fill it in" + hint(name)));
    }

    private static String hint(String field) {
        return field.equals("shielding") ? " (\"none, site policy\" is an answer)" : "";
    }

    private static void requireAge(RowFindings findings, ChartRules rules, RequiredFields set) {
        rules.findGroup(findings.row().key().examination().patientGroup())
                .filter(group -> group.by() != PatientGroup.Basis.AGE)
                .ifPresent(group -> findings.blocking(
                        "patientGroup",
                        "\"" + group.id() + "\" sorts patients by " + group.by().slug() + ", but " + set.citation()
                                + " asks for thickness and age: use a group by age"));
    }
}
