package wallchart.technique;

import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.equipment.Grid;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.AirKerma;

/**
 * What one row does at one thickness, before any rounding to stations; made to be compared with another row's at the same
 * thickness in the same room.
 *
 * @param kV tube voltage within the row's window and the generator's range
 * @param mAs current-time product; of an AEC row, the back-up
 * @param receptorExposure exposure by the power law in front of the grid, in no unit: only the ratio of two says something
 * @param grid what lies between patient and receptor; empty where nothing does
 * @param behind what the beam model says reaches the receptor; absent where it does not reach, and of what is mostly lung
 * @param entrance entrance air kerma with backscatter; of an AEC row an upper bound; absent where the beam model does not reach
 */
public record Prediction(
        double kV,
        double mAs,
        double receptorExposure,
        Optional<Grid> grid,
        Optional<Behind> behind,
        Optional<AirKerma> entrance) {

    /**
     * What reaches the receptor behind a slab of water, worked out when it is compared.
     *
     * @param how within the reach of the model, as kV and thickness
     */
    record Behind(ExposureModel model, Arrangement how, double kV, double mAs, double thicknessCentimetres) {

        /** In the receptor's own response; as air kerma where two receptors are made differently. */
        double decibelsFrom(Behind other) {
            if (isSameBeamAs(other)) {
                return ExposureArithmetic.decibels(mAs / other.mAs);
            }
            var response = how.response() == other.how.response() ? how.response() : ReceptorResponse.AIR_KERMA;
            return ExposureArithmetic.decibels(signal(response) / other.signal(response));
        }

        /** Most changes are of the mAs alone: then there is nothing to model. */
        private boolean isSameBeamAs(Behind other) {
            return kV == other.kV && thicknessCentimetres == other.thicknessCentimetres && how.equals(other.how);
        }

        private double signal(ReceptorResponse response) {
            return model.signalPerMAs(how, response, kV, thicknessCentimetres) * mAs;
        }
    }

    /**
     * Shift of the receptor exposure from another prediction to this one, in dB. Both grids' factors are taken at the kV reached, as
     * an answer takes them: behind the same grid the 15 % rule holds as it stands.
     */
    public double decibelsFrom(Prediction other) {
        double gridShift = factorAt(other.grid, kV) / factorAt(grid, kV);
        return ExposureArithmetic.decibels(receptorExposure / other.receptorExposure * gridShift);
    }

    /**
     * The same shift by the beam model, behind water as thick as the part: what a power law for all kV and thicknesses leaves out.
     * Empty where the model does not reach one of both.
     */
    public OptionalDouble findModelledDecibelsFrom(Prediction other) {
        return behind.isPresent() && other.behind.isPresent()
                ? OptionalDouble.of(behind.get().decibelsFrom(other.behind.get()))
                : OptionalDouble.empty();
    }

    private static double factorAt(Optional<Grid> grid, double kV) {
        return grid.map(used -> used.factorAt(kV)).orElse(1.0);
    }
}
