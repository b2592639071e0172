package wallchart.grading;

import wallchart.quantity.Decimals;

/**
 * How far the exposure at the receptor may jump or drift along the thickness before a chart's check says so. The site's to choose; no
 * standard seen sets them.
 *
 * <p>A jump of 1.0 dB is one R10 step of the mAs and a deviation index of 1 (IEC 62494-1). A slope of 0.5 dB for each cm is 12 % for
 * each cm, a deviation index of 1 over 2 cm: the trade's usual rates (mAs doubling per 5 cm, 2 kV per cm below 85 kV) stay under it at
 * the tube voltages they are made for, a technique that does not follow the thickness goes beyond it.
 *
 * @param maxJumpDb largest step of the predicted receptor exposure between two neighbouring bands, in dB; over 0, at most 10
 * @param maxSlopeDbPerCm largest drift of the predicted receptor exposure inside a band, in dB per cm; over 0, at most 5
 */
public record PhysicsLimits(double maxJumpDb, double maxSlopeDbPerCm) {

    /** What holds where a site has chosen nothing. */
    public static final PhysicsLimits DEFAULTS = new PhysicsLimits(1.0, 0.5);

    private static final double MOST_JUMP = 10;
    private static final double MOST_SLOPE = 5;

    public PhysicsLimits {
        require("largest jump between bands", maxJumpDb, MOST_JUMP, "dB");
        require("largest slope inside a band", maxSlopeDbPerCm, MOST_SLOPE, "dB per cm");
    }

    private static void require(String what, double value, double most, String unit) {
        if (!(value > 0) || value > most) {
            throw new IllegalArgumentException(
                    what + " is " + value + " " + unit + ": over 0, at most " + Decimals.significant(most, 2));
        }
    }
}
