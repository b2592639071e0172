package wallchart.signoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.chart.ChartContent;
import wallchart.chart.Comparison;
import wallchart.chart.Comparison.ChangedRow;
import wallchart.chart.Comparison.FieldChange;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.PartThickness;
import wallchart.signoff.RowImpact.Kind;
import wallchart.technique.Predictions;

/**
 * What a change does, row by row, to receptor exposure and entrance air kerma, held against the site's limits. Pure and
 * thread-safe: the same contents in the same room have the same digest.
 *
 * <p>An added row is compared with every earlier row of its examination whose band it overlaps. Where part of its band had no
 * answer before there is nothing to compare with, and a physicist has to look. A withdrawn row exposes nobody.
 */
public final class ImpactCalculation {

    private final RowShift rowShift;
    private final AdjustmentShift adjustmentShift;
    private final ReviewLimits limits;

    /** With the beam model that the answers use and the site's limits. */
    public ImpactCalculation(BeamPhysics physics, ReviewLimits limits) {
        var predictions = new Predictions(physics);
        this.rowShift = new RowShift(predictions);
        this.adjustmentShift = new AdjustmentShift(predictions);
        this.limits = limits;
    }

    /**
     * The impact of replacing one content by another.
     *
     * @param room as it is equipped
     * @param before what answers today; {@link ChartContent#EMPTY} where nothing does
     * @param after what would answer; neither has a key twice
     */
    public Impact of(Room room, ChartContent before, ChartContent after) {
        var comparison = Comparison.of(before, after);
        var rows = new ArrayList<RowImpact>();
        comparison.withdrawn().forEach(row -> rows.add(withdrawn(row, comparison.added(), after)));
        comparison.added().forEach(row -> rows.add(added(room, before, row)));
        var earlier = before.rows().stream().collect(Collectors.toMap(Row::key, Function.identity()));
        var later = after.rows().stream().collect(Collectors.toMap(Row::key, Function.identity()));
        for (var change : comparison.changed()) {
            rows.add(amended(room, change, earlier.get(change.key()), later.get(change.key())));
        }
        var adjustments = adjustmentShift.of(room, before, after, limits);
        return new Impact(rows, adjustments, limits, List.of(), ImpactDigest.of(room.id(), rows, adjustments, limits));
    }

    private static RowImpact withdrawn(Row row, List<Row> added, ChartContent after) {
        var remarks = new ArrayList<String>();
        added.stream()
                .filter(other -> overlap(row, other))
                .forEach(other -> remarks.add("added in its place: " + other.key()));
        Coverage.lost(row, after.rows()).ifPresent(lost -> remarks.add("no row answers " + lost + " any more"));
        return new RowImpact(
                row.key().toString(),
                Kind.WITHDRAWN,
                Optional.of(row),
                Optional.empty(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                remarks);
    }

    private RowImpact added(Room room, ChartContent before, Row row) {
        var answering = before.rows().stream()
                .filter(other -> overlap(row, other))
                .sorted(Comparator.comparing(other -> other.key().band().from()))
                .toList();
        var shift = Coverage.gap(row.key().band(), answering)
                .map(gap -> Shift.unknown("no row answered " + gap + " before: there is nothing to compare with"))
                .orElse(Shift.NONE);
        for (var other : answering) {
            shift = shift.and(rowShift.between(room, other, row)).with("compared with " + other.key());
        }
        var at = answering.stream()
                .filter(other -> holds(other, row.referenceThickness()))
                .findFirst()
                .or(() -> answering.stream().findFirst());
        return impact(
                Kind.ADDED,
                at,
                row,
                shift,
                at.map(other -> Comparison.differences(other, row)).orElse(List.of()));
    }

    private RowImpact amended(Room room, ChangedRow change, Row before, Row after) {
        return impact(Kind.AMENDED, Optional.of(before), after, rowShift.between(room, before, after), change.fields());
    }

    private RowImpact impact(Kind kind, Optional<Row> before, Row after, Shift shift, List<FieldChange> fields) {
        return new RowImpact(
                after.key().toString(),
                kind,
                before,
                Optional.of(after),
                fields,
                shift.exposureDb(),
                shift.predictedDb(),
                shift.kermaPercent(),
                shift.needsPhysicist(limits),
                shift.remarks());
    }

    private static boolean overlap(Row one, Row other) {
        return one.key().examination().equals(other.key().examination())
                && one.key().band().overlaps(other.key().band());
    }

    /** Whether the row answers there; the upper end counts, since a reference thickness may lie on it. */
    private static boolean holds(Row row, PartThickness thickness) {
        return row.key().band().holds(thickness) || row.key().band().to().equals(thickness);
    }
}
