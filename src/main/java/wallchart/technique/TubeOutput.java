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

    /** Consoles have some hundred kV stations, and a room few filters. */
    private static final int BEAMS_OF_A_TUBE = 1024;

    private final BeamPhysics physics;
    private final Calibrations calibrations;

    /**
     * By the tube itself, and as long as somebody holds it: comparing two part by part would take longer than all that is remembered
     * here, what is only tried out goes by itself, and no tube drives out another's beams.
     */
    private final Cache<Tube, Cache<BeamOf, Optional<TubeBeam>>> beams =
            Caffeine.newBuilder().weakKeys().executor(Runnable::run).build();

    private record BeamOf(TubeVoltage kV, Filtration stated) {}

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
        return beams.get(tube, unused -> newBeams())
                .get(new BeamOf(kV, stated), asked -> newBeam(tube, asked.kV(), asked.stated()));
    }

    private static Cache<BeamOf, Optional<TubeBeam>> newBeams() {
        return Caffeine.newBuilder()
                .maximumSize(BEAMS_OF_A_TUBE)
                .executor(Runnable::run)
                .build();
    }

    private Optional<TubeBeam> newBeam(Tube tube, TubeVoltage kV, Filtration stated) {
        return findObjection(tube, kV, stated).isPresent()
                ? Optional.empty()
                : Optional.of(new TubeBeam(
                        physics.beam(kV, angle(tube), inBeam(tube, stated)),
                        perMAs(tube, kV, stated),
                        source(tube, kV, stated),
                        OutputUncertainty.percent(tube, calibrations, kV, stated)));
    }

    /** How many tubes are remembered now. */
    long tubes() {
        beams.cleanUp();
        return beams.estimatedSize();
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
