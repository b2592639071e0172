package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.equipment.Grid;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;
import wallchart.technique.RowUse.Unusable;
import wallchart.technique.RowUse.Usable;

/**
 * What a change of a room's equipment does to the chart that goes on hanging there: row by row as signed, at the reference thickness,
 * the same row set in the old room and in the new one. Pure and thread-safe.
 *
 * <p>Figures come from the beam model brought to the measured output, behind a slab of water; outside its limits nothing is
 * predicted. Where the output alone differs, everything goes with it, at any thickness. AEC ends an exposure at the same signal: its rows keep the receptor exposure, and their kerma is compared at that.
 */
public final class EquipmentEffects {

    /** Beyond this a physicist and a lead radiographer want to see the row: the change of a measured output that is notable. */
    public static final double NOTABLE_PERCENT = 10;

    private final ExposureModel model;

    public EquipmentEffects(ExposureModel model) {
        this.model = model;
    }

    /** From one state of the room to another, for the rows of one chart. */
    public ChartEffects of(ChartContent chart, Room before, Room after) {
        var moved = chart.rows().stream()
                .map(row -> of(row, before, after))
                .filter(RowEffect::isMoved)
                .toList();
        return new ChartEffects(chart.rows().size(), moved);
    }

    /** The tube's output before and after, at every tube voltage at which one of both was measured; none where neither was. */
    public List<OutputShift> outputs(Room before, Room after) {
        var measured = new TreeSet<Double>();
        List.of(before, after).forEach(room -> room.tube().output().stream()
                .map(MeasuredOutput::points)
                .flatMap(List::stream)
                .forEach(point -> measured.add(point.kV().inKilovolts())));
        var shifts = new ArrayList<OutputShift>();
        for (double kV : measured) {
            var then = model.findOutputPerMAs(before.tube(), kV);
            var now = model.findOutputPerMAs(after.tube(), kV);
            if (then.isPresent() && now.isPresent()) {
                shifts.add(new OutputShift(kV, after.tube().totalFiltration(), then.getAsDouble(), now.getAsDouble()));
            }
        }
        return List.copyOf(shifts);
    }

    private RowEffect of(Row row, Room before, Room after) {
        var then = RowUse.of(before, row);
        var now = RowUse.of(after, row);
        if (now instanceof Unusable gone) {
            return unpredicted(row, false, then instanceof Usable, new ArrayList<>(gone.reasons()));
        }
        if (then instanceof Unusable) {
            var remarks = new ArrayList<String>();
            remarks.add("could not be set before, and can be now");
            return unpredicted(row, true, false, remarks);
        }
        return compared(row, (Usable) then, (Usable) now);
    }

    private static RowEffect unpredicted(Row row, boolean usable, boolean affected, List<String> remarks) {
        return new RowEffect(
                row.key().toString(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                usable,
                affected,
                remarks);
    }

    private RowEffect compared(Row row, Usable then, Usable now) {
        var remarks = new ArrayList<String>();
        settingShift(then.set(), now.set()).ifPresent(remarks::add);
        var cutOff = cutOff(then.how(), now.how());
        cutOff.ifPresent(remarks::add);
        boolean sameSet = then.set().kV().equals(now.set().kV())
                && then.set().mAs().equals(now.set().mAs());
        boolean lost = cutOff.isPresent() || !sameSet;
        if (sameSet && model.differByOutputAlone(then.how(), now.how()) && reachesBeam(then) && reachesBeam(now)) {
            return predicted(row, RowRatios.ofOutput(model, then, now), lost, remarks);
        }
        var objection = findObjection(row, then).or(() -> findObjection(row, now));
        return objection.isPresent()
                ? withoutPrediction(row, then, now, lost, objection.get(), remarks)
                : predicted(row, RowRatios.of(model, row, then, now), lost, remarks);
    }

    private boolean reachesBeam(Usable use) {
        return model.findBeamObjection(use.how(), use.set().kV().inKilovolts()).isEmpty();
    }

    private Optional<String> findObjection(Row row, Usable use) {
        return model.findBeamObjection(use.how(), row.setting().kV().inKilovolts())
                .or(() -> model.findObjection(
                        use.how(),
                        use.set().kV().inKilovolts(),
                        row.referenceThickness().inCentimetres()));
    }

    /** The output alone may be known; whatever else the tube does differently is not. */
    private RowEffect withoutPrediction(
            Row row, Usable then, Usable now, boolean lost, String objection, List<String> remarks) {
        double kV = row.setting().kV().inKilovolts();
        boolean sameTube = then.how().room().tube().equals(now.how().room().tube());
        boolean known = model.findBeamObjection(then.how(), kV).isEmpty()
                && model.findBeamObjection(now.how(), kV).isEmpty();
        var output = known ? Optional.of(RowRatios.output(model, then, now, kV)) : Optional.<OutputShift>empty();
        if (!sameTube) {
            remarks.add("receptor exposure and entrance kerma are not predicted: " + objection);
        }
        return new RowEffect(
                row.key().toString(),
                output,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                true,
                lost || output.filter(shift -> isNotable(shift.ratio())).isPresent() || !known && !sameTube,
                remarks);
    }

    private static RowEffect predicted(Row row, RowRatios ratios, boolean lost, List<String> remarks) {
        if (ratios.automatic() && ratios.output().percent() != 0) {
            remarks.add("AEC ends the exposure at the same signal: the mAs follow the output, the back-up does not");
        }
        return new RowEffect(
                row.key().toString(),
                Optional.of(ratios.output()),
                OptionalDouble.of(Math.round(ExposureArithmetic.decibels(ratios.exposure()) * 100) / 100.0),
                OptionalDouble.of(percent(ratios.kerma())),
                true,
                lost || isNotable(ratios.output().ratio()) || isNotable(ratios.exposure()) || isNotable(ratios.kerma()),
                remarks);
    }

    /** Judged by the figure that is shown. */
    private static boolean isNotable(double ratio) {
        return Math.abs(percent(ratio)) > NOTABLE_PERCENT;
    }

    private static double percent(double ratio) {
        return Math.round((ratio - 1) * 1000) / 10.0;
    }

    private static Optional<String> settingShift(ConsoleSetting then, ConsoleSetting now) {
        var before = words(then);
        var after = words(now);
        return before.equals(after) ? Optional.empty() : Optional.of("set as " + after + ", was set as " + before);
    }

    private static String words(ConsoleSetting set) {
        return set instanceof ConsoleSetting.Manual manual
                ? manual.kV() + ", " + manual.mAs() + " (" + manual.mA() + ", " + manual.time() + ")"
                : set.kV() + ", AEC back-up " + set.mAs();
    }

    /** Where the row's distance lies outside what the grid allows now, and did not before. */
    private static Optional<String> cutOff(Arrangement then, Arrangement now) {
        return isCutOff(then) || !isCutOff(now)
                ? Optional.empty()
                : Optional.of("SID " + now.sid() + " lies outside the focal range of grid "
                        + now.grid().orElseThrow().id() + " now, "
                        + now.grid().flatMap(Grid::focalRange).orElseThrow());
    }

    private static boolean isCutOff(Arrangement how) {
        return how.grid()
                .flatMap(Grid::focalRange)
                .map(range -> !range.contains(how.sid()))
                .orElse(false);
    }
}
