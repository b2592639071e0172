package wallchart.grading;

import wallchart.technique.ArrangedBeam;

/**
 * What beam physics would use in place of a rule of thumb, at one tube voltage behind one thickness: slopes of the receptor signal
 * there, by differences over 1 cm and 2 kV.
 */
final class LocalPhysics {

    private static final double HALF_CENTIMETRE = 0.5;
    private static final double KILOVOLT = 1;

    /** Where the beam model ends; differences are taken within. */
    private static final double LOWEST_KV = 40;

    private static final double HIGHEST_KV = 150;
    private static final double THICKEST_CM = 36;

    private LocalPhysics() {}

    /** Centimetres over which the mAs must double to keep the receptor exposure. */
    static double centimetresPerDoubling(ArrangedBeam beam, double kV, double thickness) {
        return Math.log(2) / lossPerCentimetre(beam, kV, thickness);
    }

    /** Kilovolts for each centimetre that keep the receptor exposure at the same mAs. */
    static double kilovoltsPerCentimetre(ArrangedBeam beam, double kV, double thickness) {
        return lossPerCentimetre(beam, kV, thickness) / gainPerKilovolt(beam, kV, thickness);
    }

    /** Natural logarithm of the signal, for each cm less. */
    private static double lossPerCentimetre(ArrangedBeam beam, double kV, double thickness) {
        double thin = Math.max(0, thickness - HALF_CENTIMETRE);
        double thick = Math.min(THICKEST_CM, thickness + HALF_CENTIMETRE);
        return Math.log(beam.signalPerMAs(kV, thin) / beam.signalPerMAs(kV, thick)) / (thick - thin);
    }

    /** The same for each kV more. */
    private static double gainPerKilovolt(ArrangedBeam beam, double kV, double thickness) {
        double low = Math.max(LOWEST_KV, kV - KILOVOLT);
        double high = Math.min(HIGHEST_KV, kV + KILOVOLT);
        return Math.log(beam.signalPerMAs(high, thickness) / beam.signalPerMAs(low, thickness)) / (high - low);
    }
}
