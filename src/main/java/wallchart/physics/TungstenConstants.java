package wallchart.physics;

/**
 * The constants of the tungsten-target spectrum, each once, with unit and status.
 *
 * <p>"Tucker": Tucker, Barnes and Chakraborty, Medical Physics 18:211 (1991). "Fitted": adjusted for this project, with what
 * against. "From memory": recalled, source not opened. K energies and shares: xraylib 4.0.0.
 */
final class TungstenConstants {

    /** Photons per electron. Tucker, quoted as 3.685e-2; the factor of 1000 is a unit slip in print, mended. */
    static final double A0 = 36.85;
    /** Photons per electron and keV. Tucker, quoted as 2.900e-5; mended likewise. */
    static final double A1 = 0.0290;
    /** Coefficients of 1, r, r^2, r^3, r^4 in the photon yield, r = photon energy / electron energy. Tucker. */
    static final double[] B = {1, -5.049, 10.847, -10.516, 3.842};

    /** Stopping power S(T) = S_A + S_B exp(-S_C T), keV cm2/g. Tucker. */
    static final double S_A = 2024.1;
    /** keV cm2/g. Tucker. */
    static final double S_B = 10361;
    /** Per keV. Tucker. */
    static final double S_C = 0.04695;

    /** Thomson-Whiddington constant, keV2 cm2/g, against kV; held below 50 kV. Tucker. */
    static final Axis THOMSON_WHIDDINGTON_KV = new Axis(50, 75, 100, 150, 200);

    static final double[] THOMSON_WHIDDINGTON = {5.4e5, 6.25e5, 7.0e5, 8.4e5, 1.0e6};
    /** Factor on it. Fitted: least squares on measured half-value layers and K-line shares. */
    static final double THOMSON_WHIDDINGTON_SCALE = 0.80;

    /** alpha r_e^2 Z^2 / atomic mass of tungsten, cm2/g; from CODATA constants. From memory. */
    static final double YIELD = 1.0395e-2;
    /** Electron rest energy, keV, rounded as in the model. CODATA. */
    static final double ELECTRON_REST_ENERGY = 511;

    /** K edge of tungsten, keV; below this tube voltage there are no K lines. xraylib. */
    static final double K_EDGE = 69.525;
    /** K photons per electron. Fitted (Tucker: 1.349e-3). */
    static final double K_YIELD = 1.41e-3;
    /** Exponent of the overvoltage less one. Fitted (Tucker: 1.648). */
    static final double K_EXPONENT = 1.534;
    /** Energies, keV, of the lines alpha-1, alpha-2, beta-1, beta-3, beta-2. xraylib. */
    static final double[] K_ENERGIES = {59.318, 57.981, 67.244, 66.950, 69.10};
    /** Shares of those lines. xraylib. */
    static final double[] K_SHARES = {0.502, 0.289, 0.108, 0.056, 0.0386};
    /** Last whole keV below the edge: attenuation of the K lines is taken from table points up to here. */
    static final int LAST_KEV_BELOW_K_EDGE = 69;

    /** Electrons in one milliampere-second. CODATA elementary charge. */
    static final double ELECTRONS_PER_MAS = 6.241509e15;
    /** Area of the sphere of one metre radius, cm2. */
    static final double SPHERE_OF_ONE_METRE = 4 * Math.PI * 100 * 100;

    /** Factor on the output. Fitted: absolute output against two published spectrum calculations; a real tube has its own. */
    static final double OUTPUT_SCALE = 1.063;
    /** Exponent of (kV / 80) on the output. Fitted likewise. */
    static final double OUTPUT_EXPONENT = 0.054;

    static final double OUTPUT_REFERENCE_KV = 80;

    private TungstenConstants() {}
}
