package wallchart.chart;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a site chose for all its charts.
 *
 * @param patientGroups the groups that rows may name; {@code adult} is among them
 * @param requiredFields the published rule sets that hold for the site
 */
public record ChartRules(List<PatientGroup> patientGroups, Set<RequiredFields> requiredFields) {

    public ChartRules {
        patientGroups = List.copyOf(patientGroups);
        requiredFields = Set.copyOf(requiredFields);
        long names = patientGroups.stream().map(PatientGroup::id).distinct().count();
        if (names != patientGroups.size()) {
            throw new IllegalArgumentException("patient groups: an id stands twice, give each group its own");
        }
        if (patientGroups.stream().noneMatch(group -> group.id().equals(PatientGroup.ADULT))) {
            throw new IllegalArgumentException(
                    "patient groups: \"adult\" is missing, a query that names none means it");
        }
    }

    /** Adults only and no rule set: what holds where a site has chosen nothing. */
    public static ChartRules adultsOnly() {
        return new ChartRules(List.of(new PatientGroup(PatientGroup.ADULT, "Adult", PatientGroup.Basis.AGE)), Set.of());
    }

    /** The patient group of that id. */
    public Optional<PatientGroup> findGroup(String id) {
        return patientGroups.stream().filter(group -> group.id().equals(id)).findFirst();
    }
}
