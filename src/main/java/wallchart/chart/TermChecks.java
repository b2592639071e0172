package wallchart.chart;

import java.util.stream.Collectors;

/** Whether a row speaks of body parts, projections and patient groups that exist. */
final class TermChecks {

    private TermChecks() {}

    static void check(RowFindings findings, ChartRules rules) {
        var examination = findings.row().key().examination();
        if (BodyParts.find(examination.bodyPart()).isEmpty()) {
            findings.blocking(
                    "bodyPart",
                    "\"" + examination.bodyPart()
                            + "\" is no DICOM Body Part Examined term of general radiography: choose one of the list, such as KNEE");
        }
        if (Projections.find(examination.projection()).isEmpty()) {
            findings.blocking(
                    "projection",
                    "\"" + examination.projection() + "\" is no known projection: choose one of the list, such as ap");
        }
        if (rules.findGroup(examination.patientGroup()).isEmpty()) {
            findings.blocking(
                    "patientGroup",
                    "\"" + examination.patientGroup() + "\" is no patient group of this site ("
                            + rules.patientGroups().stream()
                                    .map(PatientGroup::id)
                                    .collect(Collectors.joining(", "))
                            + "): choose one of these or add it to the site's settings");
        }
    }
}
