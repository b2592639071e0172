package wallchart.print;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wallchart.chart.Adjustment;
import wallchart.chart.BodyParts;
import wallchart.chart.BodyRegion;
import wallchart.chart.ChartVersion;
import wallchart.chart.ExaminationKey;
import wallchart.chart.PatientGroup;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.print.Sheet.AdjustmentLine;
import wallchart.print.Sheet.Section;

/**
 * Says in words what a version of a chart says for its room: by region of the body, adults before children, body part after body part.
 * Pure: the same version, room and printing always give the same sheet.
 */
record SheetComposer(SheetSite site, Room room) {

    /** @return without sections where the selection takes no row */
    Sheet compose(ChartVersion version, SheetHead head, Selection selection) {
        var rows = version.content().rows().stream().filter(selection::takes).toList();
        return new Sheet(
                head.head(),
                sections(rows),
                version.content().adjustments().stream().map(this::line).toList(),
                head.closing());
    }

    private List<Section> sections(List<Row> rows) {
        var byRegion = new EnumMap<BodyRegion, Map<ExaminationKey, List<Row>>>(BodyRegion.class);
        rows.stream().sorted(order()).forEach(row -> byRegion.computeIfAbsent(
                        Selection.regionOf(row), region -> new LinkedHashMap<>())
                .merge(row.key().examination(), List.of(row), SheetComposer::and));
        return byRegion.entrySet().stream()
                .flatMap(entry -> groups().stream()
                        .map(group -> section(entry.getKey(), group, entry.getValue()))
                        .filter(section -> !section.blocks().isEmpty()))
                .toList();
    }

    private static List<Row> and(List<Row> before, List<Row> next) {
        return Stream.concat(before.stream(), next.stream()).toList();
    }

    /** By ascending band within an examination; examinations in the order of the terms, as every page lists them. */
    private static Comparator<Row> order() {
        var terms = BodyParts.all().stream().map(part -> part.term()).toList();
        return Comparator.<Row>comparingInt(
                        row -> terms.indexOf(row.key().examination().bodyPart()))
                .thenComparing(row -> row.key().examination().projection())
                .thenComparing(row -> row.key().examination().support())
                .thenComparing(row -> row.key().band().from());
    }

    /** Adults first, then the groups as the site lists them. */
    private List<PatientGroup> groups() {
        return site.rules().patientGroups().stream()
                .sorted(Comparator.comparing(group -> !group.id().equals(PatientGroup.ADULT)))
                .toList();
    }

    private Section section(BodyRegion region, PatientGroup group, Map<ExaminationKey, List<Row>> examinations) {
        var composer = new BlockComposer(room, new SheetWords(site.lengthUnit()));
        var blocks = examinations.entrySet().stream()
                .filter(entry -> entry.getKey().patientGroup().equals(group.id()))
                .flatMap(entry -> composer.blocks(entry.getValue()).stream())
                .toList();
        return new Section(region.label(), group.label(), !group.id().equals(PatientGroup.ADULT), blocks);
    }

    private AdjustmentLine line(Adjustment adjustment) {
        return new AdjustmentLine(adjustment.label(), SheetWords.effect(adjustment.effect()), adjustment.notes());
    }
}
