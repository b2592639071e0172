package wallchart.technique;

import java.util.Optional;
import wallchart.quantity.AirKerma;

/**
 * What one row does at one thickness, before any rounding to stations; made to be compared with another row's at the same
 * thickness in the same room.
 *
 * @param kV tube voltage within the row's window and the generator's range
 * @param mAs current-time product; of an AEC row, the back-up
 * @param receptorExposure exposure of the receptor by the power law, in no unit: only the ratio of two says something
 * @param entrance entrance air kerma with backscatter; of an AEC row an upper bound; absent where the beam model does not reach
 */
public record Prediction(double kV, double mAs, double receptorExposure, Optional<AirKerma> entrance) {

    /** Shift of the receptor exposure from another prediction to this one, in dB. */
    public double decibelsFrom(Prediction other) {
        return ExposureArithmetic.decibels(receptorExposure / other.receptorExposure);
    }
}
