package wallchart.equipment;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeCalibration;
import wallchart.physics.TubeFit;
import wallchart.physics.TubeMeasurement;

/**
 * The beam model fitted to each tube that was measured, worked out when first asked for and kept as long as somebody holds the tube.
 * Thread-safe.
 */
public final class Calibrations {

    private final BeamPhysics physics;
    private final Cache<Tube, TubeFit> fits =
            Caffeine.newBuilder().weakKeys().executor(Runnable::run).build();

    public Calibrations(BeamPhysics physics) {
        this.physics = physics;
    }

    /** The calibration of a tube; empty where it is not measured, or at too few tube voltages. */
    public Optional<TubeCalibration> find(Tube tube) {
        return fit(tube) instanceof TubeCalibration calibrated ? Optional.of(calibrated) : Optional.empty();
    }

    /** The calibration of a tube, or why there is none. */
    public TubeFit fit(Tube tube) {
        return fits.get(tube, this::newFit);
    }

    private TubeFit newFit(Tube tube) {
        return tube.output()
                .map(output -> physics.calibrate(measurement(tube, output)))
                .orElseGet(() -> new TubeFit.Uncalibrated(
                        "the output of this tube is not measured: enter its output at three tube voltages or more, and"
                                + " a half-value layer. " + BeamPhysics.ERRS_HIGH,
                        true));
    }

    private static TubeMeasurement measurement(Tube tube, MeasuredOutput output) {
        return new TubeMeasurement(
                tube.anodeAngleDegrees().doubleValue(),
                output.totalFiltration(),
                output.halfValueLayerMillimetresAluminium().doubleValue(),
                output.halfValueLayerAt(),
                output.points().stream()
                        .map(point -> new TubeMeasurement.Point(
                                point.kV(), point.microGyPerMAs().doubleValue()))
                        .toList());
    }
}
