package wallchart.print;

import java.util.Optional;
import wallchart.chart.BodyParts;
import wallchart.chart.BodyRegion;
import wallchart.chart.Row;

/**
 * Which part of a chart is put on a sheet.
 *
 * @param patientGroup id of the only group; empty for all
 * @param region the only region of the body; empty for all
 */
public record Selection(Optional<String> patientGroup, Optional<BodyRegion> region) {

    /** The whole chart. */
    public static final Selection WHOLE = new Selection(Optional.empty(), Optional.empty());

    boolean takes(Row row) {
        var examination = row.key().examination();
        return patientGroup
                        .filter(group -> !group.equals(examination.patientGroup()))
                        .isEmpty()
                && region.filter(only -> only != regionOf(row)).isEmpty();
    }

    static BodyRegion regionOf(Row row) {
        return BodyParts.find(row.key().examination().bodyPart()).orElseThrow().region();
    }
}
