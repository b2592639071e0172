package wallchart.technique;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;

/**
 * What a room asks: this examination, this measured thickness, and what differs from the row.
 *
 * @param bodyPart DICOM Body Part Examined term
 * @param projection projection slug
 * @param patientGroup patient group id
 * @param thickness measured along the central ray
 * @param support absent where the chart has the examination at one support only
 * @param sid absent: the row's
 * @param grid absent: the row's; {@code none} for no grid
 * @param adjustments names of the chart's adjustments, each once
 */
public record Query(
        String bodyPart,
        String projection,
        String patientGroup,
        PartThickness thickness,
        Optional<SupportKind> support,
        Optional<Distance> sid,
        Optional<String> grid,
        List<String> adjustments) {

    /** @throws IllegalArgumentException for an adjustment that is named twice: its effect would be applied twice */
    public Query {
        adjustments = List.copyOf(adjustments);
        for (var name : adjustments) {
            if (Collections.frequency(adjustments, name) > 1) {
                throw new IllegalArgumentException(
                        "adjustment \"" + name + "\" is asked more than once: ask for it once");
            }
        }
    }
}
