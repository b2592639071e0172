package wallchart.web;

import java.util.List;
import wallchart.chart.PatientGroup;
import wallchart.quantity.LengthUnit;

/**
 * What every page says alike.
 *
 * @param name of the department
 * @param lengthUnit what lengths are shown and typed in; the interface itself speaks centimetres
 * @param patientGroups those that a row may be for
 * @param invented whether the department is a demonstration, whose values are for no patient
 */
public record SiteFacts(String name, LengthUnit lengthUnit, List<PatientGroup> patientGroups, boolean invented) {

    public SiteFacts {
        patientGroups = List.copyOf(patientGroups);
    }
}
