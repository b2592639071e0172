package wallchart.upkeep;

import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import wallchart.equipment.Calibrations;
import wallchart.equipment.Tube;
import wallchart.physics.BeamPhysics;
import wallchart.physics.CalibratedPoint;
import wallchart.physics.TubeCalibration;
import wallchart.quantity.TubeVoltage;
import wallchart.upkeep.FittedTube.Output;

/** Makes {@link FittedTube}s. Thread-safe. */
final class FittedTubes {

    /** A beam's output bends little over so many kV. */
    private static final long STEP_KV = 5;

    private final BeamPhysics physics;
    private final Calibrations calibrations;

    FittedTubes(BeamPhysics physics, Calibrations calibrations) {
        this.physics = physics;
        this.calibrations = calibrations;
    }

    /** Empty where the tube is uncalibrated. */
    Optional<FittedTube> find(Tube tube) {
        return calibrations
                .find(tube)
                .map(fit -> new FittedTube(
                        fit,
                        voltages(fit)
                                .map(kV -> new Output(kV, output(tube, fit, kV)))
                                .toList()));
    }

    /** The measured tube voltages, and between them every 5 kV. */
    private static Stream<TubeVoltage> voltages(TubeCalibration fit) {
        long first = (long) Math.ceil(fit.lowest().inKilovolts() / STEP_KV);
        long last = (long) Math.floor(fit.highest().inKilovolts() / STEP_KV);
        var between = LongStream.rangeClosed(first, last).mapToObj(step -> TubeVoltage.kilovolts(step * STEP_KV));
        return Stream.concat(fit.points().stream().map(CalibratedPoint::kV), between)
                .distinct()
                .sorted();
    }

    private double output(Tube tube, TubeCalibration fit, TubeVoltage kV) {
        var beam = physics.beam(kV, tube.anodeAngleDegrees().doubleValue(), fit.totalFiltration());
        return beam.outputMicroGyPerMAs() * fit.outputFactor(kV.inKilovolts());
    }
}
