package wallchart.technique;

import java.util.Optional;
import wallchart.equipment.Grid;
import wallchart.quantity.AirKerma;

/**
 * What one row does at one thickness, before any rounding to stations; made to be compared with another row's at the same
 * thickness in the same room.
 *
 * @param kV tube voltage within the row's window and the generator's range
 * @param mAs current-time product; of an AEC row, the back-up
 * @param receptorExposure exposure by the power law in front of the grid, in no unit: only the ratio of two says something
 * @param grid what lies between patient and receptor; empty where nothing does
 * @param entrance entrance air kerma with backscatter; of an AEC row an upper bound; absent where the beam model does not reach
 */
public record Prediction(
        double kV, double mAs, double receptorExposure, Optional<Grid> grid, Optional<AirKerma> entrance) {

    /**
     * Shift of the receptor exposure from another prediction to this one, in dB. Both grids' factors are taken at the kV reached, as
     * an answer takes them: behind the same grid the 15 % rule holds as it stands.
     */
    public double decibelsFrom(Prediction other) {
        double gridShift = factorAt(other.grid, kV) / factorAt(grid, kV);
        return ExposureArithmetic.decibels(receptorExposure / other.receptorExposure * gridShift);
    }

    private static double factorAt(Optional<Grid> grid, double kV) {
        return grid.map(used -> used.factorAt(kV)).orElse(1.0);
    }
}
