package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.chart.Adjustment;
import wallchart.chart.ChartContent;
import wallchart.chart.Comparison;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.technique.Predictions;

/**
 * How far the named adjustments move the exposures that they are asked for: the worst over the rows of the chart, each at its
 * reference thickness. An adjustment that is new has nothing to be compared with, so a physicist has to look. Thread-safe.
 */
final class AdjustmentShift {

    private final Predictions predictions;

    AdjustmentShift(Predictions predictions) {
        this.predictions = predictions;
    }

    List<AdjustmentImpact> of(Room room, ChartContent before, ChartContent after, ReviewLimits limits) {
        var comparison = Comparison.of(before, after);
        var impacts = new ArrayList<AdjustmentImpact>();
        comparison.withdrawnAdjustments().forEach(gone -> impacts.add(withdrawn(gone)));
        comparison.addedAdjustments().forEach(added -> impacts.add(added(added)));
        var earlier = byName(before);
        var later = byName(after);
        comparison.changedAdjustments().forEach(change -> {
            var was = earlier.get(change.name());
            var is = later.get(change.name());
            var shift = was.effect().equals(is.effect()) ? Shift.NONE : shift(room, after.rows(), was, is);
            impacts.add(impact(Optional.of(was), is, shift, shift.needsPhysicist(limits)));
        });
        return List.copyOf(impacts);
    }

    private static Map<String, Adjustment> byName(ChartContent content) {
        return content.adjustments().stream().collect(Collectors.toMap(Adjustment::name, Function.identity()));
    }

    private static AdjustmentImpact withdrawn(Adjustment gone) {
        return new AdjustmentImpact(
                gone.name(),
                Optional.of(gone),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                List.of());
    }

    private static AdjustmentImpact added(Adjustment added) {
        return impact(
                Optional.empty(), added, Shift.unknown("a new adjustment: there is nothing to compare with"), true);
    }

    private static AdjustmentImpact impact(Optional<Adjustment> was, Adjustment is, Shift shift, boolean physicist) {
        return new AdjustmentImpact(
                is.name(),
                was,
                Optional.of(is),
                shift.exposureDb(),
                shift.predictedDb(),
                shift.kermaPercent(),
                physicist,
                shift.remarks());
    }

    /** Of an AEC row the back-up is what an adjustment moves, so its shift is an upper bound like any other of AEC. */
    private Shift shift(Room room, List<Row> rows, Adjustment was, Adjustment is) {
        return rows.stream()
                .map(row -> shift(room, row, was, is))
                .reduce(Shift::and)
                .orElse(Shift.unknown("the chart has no row to try it on"));
    }

    private Shift shift(Room room, Row row, Adjustment was, Adjustment is) {
        var earlier = predictions.find(room, row, row.referenceThickness(), Optional.of(was));
        var later = predictions.find(room, row, row.referenceThickness(), Optional.of(is));
        return earlier.isEmpty() || later.isEmpty()
                ? Shift.unknown("row " + row.key() + " cannot be worked out with it in room " + room.id())
                : new Shift(
                        Shift.hundredths(later.get().decibelsFrom(earlier.get())),
                        RowShift.predicted(earlier.get(), later.get()),
                        RowShift.kerma(earlier.get(), later.get()),
                        List.of());
    }
}
