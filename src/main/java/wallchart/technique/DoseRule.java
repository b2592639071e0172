package wallchart.technique;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.chart.ExaminationKey;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Tube;
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
        var filtration = PhantomSignal.totalFiltration(situation.room(), situation.row());
        if (!covers(tube, set.kV(), filtration)) {
            return Optional.empty();
        }
        double focusSkin = situation.focusSkinCentimetres();
        double output = output(tube, set.kV(), filtration);
        double incident =
                ExposureArithmetic.incidentAirKermaMicroGy(output, set.mAs().inMilliampereSeconds(), focusSkin);
        double backscatter = backscatter(situation, set.kV(), filtration, focusSkin);
        return Optional.of(new DoseEstimate(
                new AirKerma(incident),
                new AirKerma(incident * backscatter),
                backscatter,
                focusSkin,
                set.mAs(),
                set instanceof ConsoleSetting.Automatic,
                source(tube.output(), set.kV(), filtration),
                tube.output().map(DoseRule::uncertainty).orElse(UNCALIBRATED_PERCENT),
                findLevel(situation.row().key().examination())));
    }

    /**
     * Entrance air kerma in uGy for each mAs at any tube voltage, rounded to tenths of a kilovolt as consoles are set; empty where
     * the beam model does not reach.
     */
    Optional<Double> findEntrancePerMAs(Situation situation, double kilovolts) {
        var kV = new TubeVoltage(BigDecimal.valueOf(kilovolts).setScale(1, RoundingMode.HALF_UP));
        var tube = situation.room().tube();
        var filtration = PhantomSignal.totalFiltration(situation.room(), situation.row());
        if (!covers(tube, kV, filtration)) {
            return Optional.empty();
        }
        double focusSkin = situation.focusSkinCentimetres();
        return Optional.of(ExposureArithmetic.incidentAirKermaMicroGy(output(tube, kV, filtration), 1, focusSkin)
                * backscatter(situation, kV, filtration, focusSkin));
    }

    private double backscatter(Situation situation, TubeVoltage kV, Filtration filtration, double focusSkin) {
        double angle = situation.room().tube().anodeAngleDegrees().doubleValue();
        return physics.beam(kV, angle, filtration)
                .backscatterFactor(fieldDiameterAtSkin(situation, focusSkin), focusSkin);
    }

    /** Output in uGy/mAs at 1 m: the tube's own measurement, brought by the model to the filtration used; else the model alone. */
    private double output(Tube tube, TubeVoltage kV, Filtration used) {
        if (tube.output().isEmpty()) {
            return modelled(tube, kV, used);
        }
        var measured = tube.output().get();
        double asMeasured = measured.microGyPerMAs(kV.inKilovolts());
        var filtration = measured.totalFiltration();
        return filtration.equals(used)
                ? asMeasured
                : asMeasured * modelled(tube, kV, used) / modelled(tube, kV, filtration);
    }

    private double modelled(Tube tube, TubeVoltage kV, Filtration total) {
        return physics.beam(kV, tube.anodeAngleDegrees().doubleValue(), total).outputMicroGyPerMAs();
    }

    /** Whether the model reaches every beam that the estimate needs. */
    private boolean covers(Tube tube, TubeVoltage kV, Filtration used) {
        double angle = tube.anodeAngleDegrees().doubleValue();
        return physics.findObjection(kV, angle, used).isEmpty()
                && tube.output()
                        .map(MeasuredOutput::totalFiltration)
                        .filter(measured -> !measured.equals(used))
                        .flatMap(measured -> physics.findObjection(kV, angle, measured))
                        .isEmpty();
    }

    /** Diameter of the circle with the area that the receptor-plane field has at the skin, in cm. */
    private static double fieldDiameterAtSkin(Situation situation, double focusSkin) {
        double scale = focusSkin / situation.sid().inCentimetres();
        double area = situation.row().setting().field().areaSquareCentimetres() * scale * scale;
        return 2 * Math.sqrt(area / Math.PI);
    }

    private static String source(Optional<MeasuredOutput> output, TubeVoltage kV, Filtration used) {
        return output.map(measured -> "measured " + measured.measuredOn() + extended(measured, kV)
                        + (measured.totalFiltration().equals(used)
                                ? ""
                                : ", brought to " + used + " by the beam model"))
                .orElse("beam model, uncalibrated");
    }

    private static String extended(MeasuredOutput measured, TubeVoltage kV) {
        return measured.covers(kV.inKilovolts())
                ? ""
                : ", extended beyond " + measured.lowest() + " to " + measured.highest();
    }

    private static int uncertainty(MeasuredOutput measured) {
        return (int) Math.round(Math.hypot(measured.uncertaintyPercent().doubleValue(), METHOD_PERCENT));
    }

    private Optional<ReferenceLevel> findLevel(ExaminationKey examination) {
        return Optional.ofNullable(
                levels.get(examination.bodyPart() + "/" + examination.projection() + "/" + examination.patientGroup()));
    }
}
