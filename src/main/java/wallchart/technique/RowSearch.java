package wallchart.technique;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.Adjustment;
import wallchart.chart.Band;
import wallchart.chart.ChartVersion;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.equipment.Support;
import wallchart.equipment.SupportKind;
import wallchart.quantity.PartThickness;
import wallchart.technique.Refusal.Kind;

/** Rule 1: finds the row that answers a query, and everything else the query names; or says which name it does not know. */
final class RowSearch {

    private RowSearch() {}

    /** What comes of the search. */
    sealed interface Outcome {

        /** Every name in the query is known. */
        record Found(Situation situation) implements Outcome {}

        /** One is not, or no band holds the thickness. */
        record Refused(Refusal refusal) implements Outcome {}
    }

    static Outcome search(Room room, ChartVersion chart, Query query) {
        var rows = chart.rows(query.bodyPart(), query.projection(), query.patientGroup());
        if (rows.isEmpty()) {
            return new Outcome.Refused(unknownExamination(chart, query));
        }
        var supports = EnumSet.noneOf(SupportKind.class);
        rows.forEach(row -> supports.add(row.key().examination().support()));
        var support = query.support().orElse(supports.iterator().next());
        if (query.support().isEmpty() && supports.size() > 1 || !supports.contains(support)) {
            return new Outcome.Refused(supportRequired(query, List.copyOf(supports)));
        }
        for (var row : rows) {
            boolean there = row.key().examination().support() == support;
            if (there && row.key().band().holds(query.thickness())) {
                return withRow(room, chart, query, row);
            }
        }
        return new Outcome.Refused(outsideChart(query, support, rows));
    }

    private static Refusal unknownExamination(ChartVersion chart, Query query) {
        var projections = chart.projections(query.bodyPart());
        if (projections.isEmpty()) {
            return Refusal.choice(
                    Kind.UNKNOWN_BODY_PART,
                    "the chart of room " + chart.head().room() + " has no body part \"" + query.bodyPart()
                            + "\": ask for one it has, in the terms of DICOM Body Part Examined",
                    chart.bodyParts());
        }
        if (!projections.contains(query.projection())) {
            return Refusal.choice(
                    Kind.UNKNOWN_PROJECTION,
                    query.bodyPart() + " has no projection \"" + query.projection() + "\" on the chart of room "
                            + chart.head().room() + ": ask for one it has, or propose a change",
                    projections);
        }
        return Refusal.choice(
                Kind.UNKNOWN_PATIENT_GROUP,
                query.bodyPart() + " " + query.projection() + " has no rows for patient group \"" + query.patientGroup()
                        + "\": ask for one it has; never use another group's row without judgement",
                chart.patientGroups(query.bodyPart(), query.projection()));
    }

    private static Refusal supportRequired(Query query, List<SupportKind> supports) {
        var slugs = supports.stream().map(SupportKind::slug).toList();
        var examination = query.bodyPart() + " " + query.projection() + " for " + query.patientGroup();
        var detail = query.support()
                .map(asked -> examination + " is not charted at \"" + asked.slug() + "\": choose "
                        + String.join(" or ", slugs))
                .orElse(examination + " is charted at " + String.join(" and ", slugs) + ": say which with support");
        return Refusal.choice(Kind.SUPPORT_REQUIRED, detail, slugs);
    }

    private static Refusal outsideChart(Query query, SupportKind support, List<Row> rows) {
        var thickness = query.thickness();
        var bands = rows.stream()
                .filter(row -> row.key().examination().support() == support)
                .map(row -> row.key().band())
                .toList();
        var nearest = Stream.concat(lastBelow(bands, thickness).stream(), firstAbove(bands, thickness).stream())
                .toList();
        var words =
                String.join(" and ", nearest.stream().map(band -> band + " cm").toList());
        var elsewhere = elsewhere(rows, thickness);
        return Refusal.outsideChart(
                query.bodyPart() + " " + query.projection() + " for " + query.patientGroup() + " at " + support.slug()
                        + ": no band holds " + thickness
                        + "; nearest: " + words
                        + (elsewhere.isEmpty()
                                ? ""
                                : "; charted for this thickness at " + String.join(" and ", elsewhere))
                        + ". Check the measurement; outside the chart decide under local rules and "
                        + "propose a change",
                nearest,
                elsewhere);
    }

    /** Other supports with a band for that thickness. */
    private static List<String> elsewhere(List<Row> rows, PartThickness thickness) {
        return rows.stream()
                .filter(row -> row.key().band().holds(thickness))
                .map(row -> row.key().examination().support().slug())
                .distinct()
                .toList();
    }

    private static Optional<Band> lastBelow(List<Band> bands, PartThickness thickness) {
        return bands.stream()
                .filter(band -> band.to().compareTo(thickness) <= 0)
                .reduce((lower, higher) -> higher);
    }

    private static Optional<Band> firstAbove(List<Band> bands, PartThickness thickness) {
        return bands.stream()
                .filter(band -> band.from().compareTo(thickness) > 0)
                .findFirst();
    }

    private static Outcome withRow(Room room, ChartVersion chart, Query query, Row row) {
        var support = room.findSupport(row.key().examination().support());
        var receptor = room.findReceptor(row.setting().receptor());
        var rowGrid = room.findGrid(row.setting().grid());
        var refitted = Refit.objection(room, row);
        if (refitted.isPresent()) {
            return new Outcome.Refused(refitted.get());
        }
        var gridName = query.grid().orElse(row.setting().grid());
        if (!gridName.equals(row.setting().grid()) && !support.get().grids().contains(gridName)) {
            return new Outcome.Refused(unknownGrid(room, support.get(), gridName));
        }
        var adjustments = new ArrayList<Adjustment>();
        for (var name : query.adjustments()) {
            var adjustment = chart.findAdjustment(name);
            if (adjustment.isEmpty()) {
                return new Outcome.Refused(unknownAdjustment(chart, name));
            }
            adjustments.add(adjustment.get());
        }
        return new Outcome.Found(new Situation(
                room,
                row,
                support.get(),
                receptor.get(),
                query.thickness(),
                query.sid().orElse(row.setting().sid()),
                room.findGrid(gridName),
                rowGrid,
                List.copyOf(adjustments)));
    }

    private static Refusal unknownGrid(Room room, Support support, String asked) {
        return Refusal.choice(
                Kind.UNKNOWN_GRID,
                "grid \"" + asked + "\" cannot be used at " + support.kind().slug() + " in room " + room.id()
                        + ": choose " + String.join(" or ", support.grids()),
                support.grids());
    }

    private static Refusal unknownAdjustment(ChartVersion chart, String asked) {
        var names = chart.content().adjustments().stream().map(Adjustment::name).toList();
        return Refusal.choice(
                Kind.UNKNOWN_ADJUSTMENT,
                "version " + chart.head().number() + " of room " + chart.head().room() + " has no adjustment \"" + asked
                        + "\": choose one it has",
                names);
    }
}
