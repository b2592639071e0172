package wallchart.technique;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.chart.ExaminationKey;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.AirKerma;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** Rule 9: incident and entrance air kerma of a setting. Thread-safe. */
final class DoseRule {

    /** Default tubes differ from the beam model by up to this much; expanded, in percent. */
    private static final int UNCALIBRATED_PERCENT = 30;

    /**
     * Agreement of calculated entrance dose with phantom measurement, 12 to 14 %, taken as 13 %: Compagnone et al., J. Appl. Clin.
     * Med. Phys. 2005. Combined with the uncertainty of the measured output by root of the sum of squares.
     */
    private static final double METHOD_PERCENT = 13;

    private final BeamPhysics physics;
    private final Map<String, ReferenceLevel> levels;

    DoseRule(BeamPhysics physics, List<ReferenceLevel> levels) {
        this.physics = physics;
        this.levels = levels.stream()
                .collect(Collectors.toUnmodifiableMap(
                        level -> level.bodyPart() + "/" + level.projection() + "/" + level.patientGroup(),
                        Function.identity()));
    }

    /** Empty where the beam model does not reach the tube voltage or the filtration. */
    Optional<DoseEstimate> estimate(Situation situation, ConsoleSetting set) {
        var tube = situation.room().tube();
        var added = situation.row().setting().addedFiltration();
        var filtration = tube.totalFiltration().and(added);
        double angle = tube.anodeAngleDegrees().doubleValue();
        if (physics.findObjection(set.kV(), angle, filtration).isPresent()) {
            return Optional.empty();
        }
        double focusSkin = situation.focusSkinCentimetres();
        double output = output(situation.room(), set.kV(), added);
        double incident =
                ExposureArithmetic.incidentAirKermaMicroGy(output, set.mAs().inMilliampereSeconds(), focusSkin);
        double backscatter = physics.beam(set.kV(), angle, filtration)
                .backscatterFactor(fieldDiameterAtSkin(situation, focusSkin), focusSkin);
        return Optional.of(new DoseEstimate(
                new AirKerma(incident),
                new AirKerma(incident * backscatter),
                backscatter,
                focusSkin,
                set.mAs(),
                set instanceof ConsoleSetting.Automatic,
                source(tube.output(), set.kV()),
                tube.output().map(DoseRule::uncertainty).orElse(UNCALIBRATED_PERCENT),
                findLevel(situation.row().key().examination())));
    }

    /** Output in uGy/mAs at 1 m: the tube's own measurement, its filtration changed by the model; else the model alone. */
    private double output(Room room, TubeVoltage kV, Filtration added) {
        double angle = room.tube().anodeAngleDegrees().doubleValue();
        if (room.tube().output().isEmpty()) {
            return physics.beam(kV, angle, room.tube().totalFiltration().and(added))
                    .outputMicroGyPerMAs();
        }
        var measured = room.tube().output().get();
        double asMeasured = measured.microGyPerMAs(kV.inKilovolts());
        if (added.isNone()) {
            return asMeasured;
        }
        var filtration = measured.totalFiltration();
        return asMeasured
                * physics.beam(kV, angle, filtration.and(added)).outputMicroGyPerMAs()
                / physics.beam(kV, angle, filtration).outputMicroGyPerMAs();
    }

    /** Diameter of the circle with the area that the receptor-plane field has at the skin, in cm. */
    private static double fieldDiameterAtSkin(Situation situation, double focusSkin) {
        double scale = focusSkin / situation.sid().inCentimetres();
        double area = situation.row().setting().field().areaSquareCentimetres() * scale * scale;
        return 2 * Math.sqrt(area / Math.PI);
    }

    private static String source(Optional<MeasuredOutput> output, TubeVoltage kV) {
        return output.map(measured -> "measured " + measured.measuredOn()
                        + (measured.covers(kV.inKilovolts())
                                ? ""
                                : ", extended beyond " + measured.lowest() + " to " + measured.highest()))
                .orElse("beam model, uncalibrated");
    }

    private static int uncertainty(MeasuredOutput measured) {
        return (int) Math.round(Math.hypot(measured.uncertaintyPercent().doubleValue(), METHOD_PERCENT));
    }

    private Optional<ReferenceLevel> findLevel(ExaminationKey examination) {
        return Optional.ofNullable(
                levels.get(examination.bodyPart() + "/" + examination.projection() + "/" + examination.patientGroup()));
    }
}
