package wallchart.physics;

/**
 * How much scatter adds to the signal for one receptor, grid and field: bilinear in ln(1 + scatter/primary) over photon energy
 * and thickness, no scatter at thickness 0. Below 20 and above 140 keV the end value is held.
 */
final class FieldScatter {

    private final Axis energies;
    private final Axis thicknesses;
    private final double[][] logarithms;

    FieldScatter(Axis energies, Axis thicknesses, double[][] logarithms) {
        this.energies = energies;
        this.thicknesses = thicknesses;
        this.logarithms = logarithms;
    }

    /** 1 + scatter/primary at each photon energy behind that much water. */
    PerEnergy factorBehind(double thicknessCentimetres) {
        int slab = thicknesses.intervalOf(thicknessCentimetres);
        double inSlab = thicknesses.fractionIn(slab, thicknessCentimetres);
        return PerEnergy.of(bin -> {
            double energy = EnergyBins.energyOf(bin);
            int below = energies.intervalOf(energy);
            double low = Axis.between(logarithms[below][slab], logarithms[below][slab + 1], inSlab);
            double high = Axis.between(logarithms[below + 1][slab], logarithms[below + 1][slab + 1], inSlab);
            return Math.exp(Axis.between(low, high, energies.fractionIn(below, energy)));
        });
    }
}
