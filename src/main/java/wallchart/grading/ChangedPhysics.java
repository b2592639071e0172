package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;

/**
 * What beam physics says of the examinations that a change touches.
 *
 * @param brought what the change brings, makes different or takes away, cautions first
 * @param asBefore cautions that stood in the base already and still stand; notes that did are left out
 */
public record ChangedPhysics(List<Finding> brought, List<Finding> asBefore) {

    /** Nothing to say. */
    public static final ChangedPhysics NOTHING = new ChangedPhysics(List.of(), List.of());

    public ChangedPhysics {
        brought = List.copyOf(brought);
        asBefore = List.copyOf(asBefore);
    }

    static ChangedPhysics of(List<ExaminationPhysics> before, List<ExaminationPhysics> after) {
        var earlier = new HashMap<ExaminationKey, ExaminationPhysics>();
        before.forEach(examination -> earlier.put(examination.examination(), examination));
        var brought = new ArrayList<Finding>();
        var asBefore = new ArrayList<Finding>();
        for (var examination : after) {
            var base = Optional.ofNullable(earlier.get(examination.examination()));
            for (var finding : examination.findings()) {
                var then = base.flatMap(of -> of.find(finding.kind()));
                if (then.filter(finding::equals).isEmpty()) {
                    brought.add(brought(finding, then));
                } else if (finding.severity() == Severity.CAUTION) {
                    asBefore.add(told(finding, "as before this change: " + finding.reason()));
                }
            }
            base.ifPresent(of -> brought.addAll(gone(of, examination)));
        }
        brought.sort(Comparator.comparing(Finding::severity));
        return new ChangedPhysics(brought, asBefore);
    }

    private static Finding brought(PhysicsFinding finding, Optional<PhysicsFinding> then) {
        return told(
                finding,
                finding.reason()
                        + then.map(of -> "; before this change " + of.figure()).orElse(""));
    }

    /** Cautions that the change does away with, as notes. */
    private static List<Finding> gone(ExaminationPhysics before, ExaminationPhysics after) {
        return before.findings().stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .filter(finding -> after.find(finding.kind()).isEmpty())
                .map(finding ->
                        Finding.note(finding.row(), finding.field(), "this change does away with: " + finding.figure()))
                .toList();
    }

    private static Finding told(PhysicsFinding finding, String reason) {
        return new Finding(finding.severity(), finding.row(), finding.field(), reason);
    }
}
