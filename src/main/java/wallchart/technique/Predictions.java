package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.AirKerma;
import wallchart.quantity.PartThickness;
import wallchart.technique.Prediction.Behind;

/**
 * Rules 2 to 6 and 9 asked of one row alone, signed or not: what it does to receptor and skin, so that two rows can be compared.
 * Thread-safe.
 */
public final class Predictions {

    private final ExposureModel model;
    private final PhantomSignal phantom;
    private final Effects effects;
    private final DoseRule doseRule;

    /** With the beam model that the answers use. */
    public Predictions(BeamPhysics physics) {
        this.model = new ExposureModel(physics);
        this.phantom = new PhantomSignal(model);
        this.effects = new Effects(phantom);
        this.doseRule = new DoseRule(model, List.of());
    }

    /**
     * What the row does at that thickness, with that adjustment or with none.
     *
     * @return empty where the row names what the room does not have, the patient does not fit, or the rules arrive at no voltage
     */
    public Optional<Prediction> find(Room room, Row row, PartThickness thickness, Optional<Adjustment> adjustment) {
        if (Refit.objection(room, row).isPresent()) {
            return Optional.empty();
        }
        var grid = room.findGrid(row.setting().grid());
        var situation = new Situation(
                room,
                row,
                room.findSupport(row.key().examination().support()).orElseThrow(),
                room.findReceptor(row.setting().receptor()).orElseThrow(),
                thickness,
                row.setting().sid(),
                grid,
                grid,
                adjustment.stream().toList());
        boolean fits = situation.focusSkinCentimetres() > 0 && phantom.reaches(situation);
        return fits ? within(situation) : Optional.empty();
    }

    /**
     * What the console makes of the row at that thickness, by the row's own rule and without adjustment: rules 2 to 8.
     *
     * @return empty where {@link #find} is
     */
    public Optional<ConsoleReach> findReach(Room room, Row row, PartThickness thickness) {
        return find(room, row, thickness, Optional.empty())
                .map(there -> new Console(room, row)
                        .attempt(new ConsoleAttempt.Wish(
                                new Working(there.kV(), there.mAs()),
                                row.setting().focalSpot())))
                .map(ConsoleReach::of);
    }

    private Optional<Prediction> within(Situation situation) {
        var wanted = Working.of(situation.row(), effects.of(situation));
        return wanted.kV() > 0
                ? Optional.of(prediction(situation, new Console(situation.room(), situation.row()).limit(wanted)))
                : Optional.empty();
    }

    /** Exposure goes with mAs and with kV to the power n, against the square of the distance and the grid's factor. */
    private Prediction prediction(Situation situation, Working working) {
        double sid = situation.sid().inCentimetres();
        double exposure = working.mAs() * ExposureArithmetic.voltageFactor(1, 1 / working.kV()) / (sid * sid);
        var entrance = doseRule.findEntrancePerMAs(situation, working.kV())
                .map(perMAs -> new AirKerma(perMAs * working.mAs()));
        return new Prediction(
                working.kV(), working.mAs(), exposure, situation.grid(), findBehind(situation, working), entrance);
    }

    private Optional<Behind> findBehind(Situation situation, Working working) {
        var how = Arrangement.of(situation);
        double thickness = situation.thickness().inCentimetres();
        boolean lung = MostlyLung.is(situation.row().key().examination());
        return lung || model.findObjection(how, working.kV(), thickness).isPresent()
                ? Optional.empty()
                : Optional.of(new Behind(model, how, working.kV(), working.mAs(), thickness));
    }

    /** Whether AEC ends both rows' exposures at the same signal: a chamber knows neither distance nor back-up. */
    public static boolean endAlike(Row before, Row after) {
        return before.setting().control() instanceof ExposureControl.Automatic earlier
                && after.setting().control() instanceof ExposureControl.Automatic later
                && earlier.chambers().equals(later.chambers())
                && earlier.density() == later.density()
                && before.setting().kV().equals(after.setting().kV())
                && before.setting().grid().equals(after.setting().grid())
                && before.setting().receptor().equals(after.setting().receptor())
                && before.setting().addedFiltration().equals(after.setting().addedFiltration());
    }
}
