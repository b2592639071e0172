package wallchart.web.view;

import java.util.List;
import wallchart.chart.PatientGroup;
import wallchart.quantity.LengthUnit;

/** What every page says alike: the department's name, {@code cm} or {@code in}, and its patient groups. */
public record SiteView(String name, String lengthUnit, List<Group> patientGroups) {

    /** A patient group with its limits in words. */
    public record Group(String id, String label, String by) {}

    public static SiteView of(String name, LengthUnit unit, List<PatientGroup> groups) {
        return new SiteView(
                name,
                unit.symbol(),
                groups.stream()
                        .map(group ->
                                new Group(group.id(), group.label(), group.by().slug()))
                        .toList());
    }
}
