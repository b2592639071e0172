package wallchart.physics;

/** The photon energies the model counts in: one bin per whole keV, from 8 to 150, each half a keV to either side. */
final class EnergyBins {

    static final int LOWEST_KEV = 8;
    static final int HIGHEST_KEV = 150;
    static final int COUNT = HIGHEST_KEV - LOWEST_KEV + 1;

    private EnergyBins() {}

    static int energyOf(int bin) {
        return LOWEST_KEV + bin;
    }

    static int binOf(int kiloelectronvolts) {
        return kiloelectronvolts - LOWEST_KEV;
    }
}
