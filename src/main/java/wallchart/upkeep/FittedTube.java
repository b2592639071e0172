package wallchart.upkeep;

import java.util.List;
import wallchart.physics.TubeCalibration;
import wallchart.quantity.TubeVoltage;

/**
 * The beam model as it was fitted to one measured tube, to be looked at beside the measurement.
 *
 * @param curve output of the fit over the measured tube voltages, by ascending tube voltage
 */
public record FittedTube(TubeCalibration calibration, List<Output> curve) {

    /** Output of the fit at one tube voltage, at one metre. */
    public record Output(TubeVoltage kV, double microGyPerMAs) {}

    public FittedTube {
        curve = List.copyOf(curve);
    }
}
