package wallchart.technique;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import wallchart.equipment.Calibrations;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Tube;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeCalibration;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What a tube gives per mAs, and through how much metal: as measured, within the tube voltages that were; beyond them by the beam
 * model fitted to the measurement, from the measured end point on; by the model alone where nobody measured. Thread-safe.
 *
 * <p>Filtrations are asked for as stated on paper. What the half-value layer says of the measured beam is added here.
 */
final class TubeOutput {

    /** Consoles have some hundred kV stations, and a department few tubes and filters. */
    private static final int BEAMS_KEPT = 4096;

    private final BeamPhysics physics;
    private final Calibrations calibrations;
    private final Cache<BeamOf, Optional<TubeBeam>> beams = Caffeine.newBuilder()
            .maximumSize(BEAMS_KEPT)
            .executor(Runnable::run)
            .build();

    /** A tube is known by its identity: comparing two part by part would take longer than all that is remembered here. */
    private record BeamOf(Tube tube, TubeVoltage kV, Filtration stated) {
        @Override
        public boolean equals(Object other) {
            return other instanceof BeamOf that
                    && tube == that.tube
                    && kV.equals(that.kV)
                    && stated.equals(that.stated);
        }

        @Override
        public int hashCode() {
            return (System.identityHashCode(tube) * 31 + kV.hashCode()) * 31 + stated.hashCode();
        }
    }

    TubeOutput(BeamPhysics physics) {
        this.physics = physics;
        this.calibrations = new Calibrations(physics);
    }

    /** What the beam passes: the stated filtration, brought to the half-value layer that was measured of this tube. */
    Filtration inBeam(Tube tube, Filtration stated) {
        return calibrations
                .find(tube)
                .map(calibration -> calibration.corrected(stated))
                .orElse(stated);
    }

    /** The tube's beam; empty where {@link #findObjection} has something to say. */
    Optional<TubeBeam> find(Tube tube, TubeVoltage kV, Filtration stated) {
        return beams.get(new BeamOf(tube, kV, stated), this::newBeam);
    }

    private Optional<TubeBeam> newBeam(BeamOf asked) {
        var tube = asked.tube();
        return findObjection(tube, asked.kV(), asked.stated()).isPresent()
                ? Optional.empty()
                : Optional.of(new TubeBeam(
                        physics.beam(asked.kV(), angle(tube), inBeam(tube, asked.stated())),
                        perMAs(tube, asked.kV(), asked.stated()),
                        source(tube, asked.kV(), asked.stated()),
                        OutputUncertainty.percent(tube, calibrations, asked.kV(), asked.stated())));
    }

    /** The sentence that says why the output is not known there; empty where it is. */
    Optional<String> findObjection(Tube tube, TubeVoltage kV, Filtration stated) {
        var passed = inBeam(tube, stated);
        return physics.findObjection(kV, angle(tube), passed)
                .map(why -> passed.equals(stated)
                        ? why
                        : why + " (" + stated + " on paper, brought to the measured half-value layer)")
                .or(() -> tube.output()
                        .filter(measured -> !measured.totalFiltration().equals(stated))
                        .flatMap(measured -> physics.findObjection(kV, angle(tube), asMeasured(tube, measured))));
    }

    /** Air kerma per mAs at one metre, in uGy, free in air. */
    private double perMAs(Tube tube, TubeVoltage kV, Filtration stated) {
        if (tube.output().isEmpty()) {
            return modelled(tube, kV, stated);
        }
        var measured = tube.output().get();
        double kilovolts = kV.inKilovolts();
        var fitted = calibrations.find(tube).filter(calibration -> !measured.covers(kilovolts));
        if (fitted.isPresent()) {
            return fitted.get().outputFactorBeyond(kilovolts) * modelled(tube, kV, inBeam(tube, stated));
        }
        double output = measured.microGyPerMAs(kilovolts);
        return measured.totalFiltration().equals(stated)
                ? output
                : output * modelled(tube, kV, inBeam(tube, stated)) / modelled(tube, kV, asMeasured(tube, measured));
    }

    /** Where that figure comes from, in words. */
    private String source(Tube tube, TubeVoltage kV, Filtration stated) {
        if (tube.output().isEmpty()) {
            return "beam model, uncalibrated, +-30 %";
        }
        var measured = tube.output().get();
        boolean calibrated = calibrations.find(tube).isPresent();
        if (measured.covers(kV.inKilovolts())) {
            return "measured " + measured.measuredOn() + broughtTo(stated, measured, calibrated);
        }
        var span = measured.lowest() + " to " + measured.highest();
        return calibrated
                ? "calibrated beam model beyond " + span + ", measured " + measured.measuredOn()
                : "measured " + measured.measuredOn() + ", extended beyond " + span
                        + broughtTo(stated, measured, false);
    }

    private static String broughtTo(Filtration stated, MeasuredOutput measured, boolean calibrated) {
        return measured.totalFiltration().equals(stated)
                ? ""
                : ", brought to " + stated + " by the " + (calibrated ? "calibrated " : "") + "beam model";
    }

    /** What the beam passed when it was measured. */
    private Filtration asMeasured(Tube tube, MeasuredOutput measured) {
        return calibrations.find(tube).map(TubeCalibration::totalFiltration).orElse(measured.totalFiltration());
    }

    private double modelled(Tube tube, TubeVoltage kV, Filtration total) {
        return physics.beam(kV, angle(tube), total).outputMicroGyPerMAs();
    }

    private static double angle(Tube tube) {
        return tube.anodeAngleDegrees().doubleValue();
    }
}
