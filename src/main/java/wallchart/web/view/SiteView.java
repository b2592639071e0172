package wallchart.web.view;

import java.util.Arrays;
import java.util.List;
import wallchart.chart.BodyParts;
import wallchart.chart.BodyRegion;
import wallchart.chart.PatientGroup;
import wallchart.chart.Projections;
import wallchart.quantity.LengthUnit;

/**
 * What every page says alike: the department's name, {@code cm} or {@code in}, and the words for what a chart names.
 *
 * @param invented whether the department is a demonstration, whose values are for no patient
 */
public record SiteView(
        String name,
        String lengthUnit,
        boolean invented,
        List<Group> patientGroups,
        List<Region> regions,
        List<Part> bodyParts,
        List<Direction> projections) {

    private static final List<Region> REGIONS = Arrays.stream(BodyRegion.values())
            .map(region -> new Region(region.slug(), region.label()))
            .toList();

    private static final List<Part> PARTS = BodyParts.all().stream()
            .map(part -> new Part(part.term(), part.label(), part.region().slug()))
            .toList();

    private static final List<Direction> DIRECTIONS = Projections.all().stream()
            .map(projection -> new Direction(projection.slug(), projection.label()))
            .toList();

    /** A patient group with its limits in words. */
    public record Group(String id, String label, String by) {}

    /** A region of the body; pages list the regions in this order. */
    public record Region(String region, String label) {}

    /** A body part by its DICOM term, with the region it is listed under. */
    public record Part(String bodyPart, String label, String region) {}

    /** A projection with its words. */
    public record Direction(String projection, String label) {}

    public static SiteView of(String name, LengthUnit unit, List<PatientGroup> groups, boolean invented) {
        return new SiteView(
                name,
                unit.symbol(),
                invented,
                groups.stream()
                        .map(group ->
                                new Group(group.id(), group.label(), group.by().slug()))
                        .toList(),
                REGIONS,
                PARTS,
                DIRECTIONS);
    }
}
