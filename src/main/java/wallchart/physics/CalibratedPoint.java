package wallchart.physics;

import wallchart.quantity.Decimals;
import wallchart.quantity.TubeVoltage;

/**
 * One measured output beside the fit of its tube.
 *
 * @param measuredMicroGyPerMAs at one metre
 * @param fittedMicroGyPerMAs what the fit through all points says there
 * @param residualPercent measured over that fit, less 1
 * @param deviationPercent measured over the fit through the <em>other</em> points, less 1: of three points, an end that is 20 % off
 *     bends the fit towards itself and leaves a residual of a few percent only
 */
public record CalibratedPoint(
        TubeVoltage kV,
        double measuredMicroGyPerMAs,
        double fittedMicroGyPerMAs,
        double residualPercent,
        double deviationPercent) {

    /**
     * Percent beyond which a point is questioned: twice the 5 % that a calibrated model keeps, so a sound point does not reach it.
     * Common practice, no source.
     */
    public static final double QUESTIONED_ABOVE_PERCENT = 10;

    /** Whether the point stands so far from the fit that it should be measured again or confirmed. */
    public boolean questioned() {
        return Math.abs(residualPercent) > QUESTIONED_ABOVE_PERCENT
                || Math.abs(deviationPercent) > QUESTIONED_ABOVE_PERCENT;
    }

    /** Where the point stands, for whoever measured it. */
    public String sentence() {
        return kV + ": " + Decimals.significant(measuredMicroGyPerMAs, 4) + " uGy/mAs is "
                + Math.round(Math.abs(deviationPercent)) + " % " + (deviationPercent < 0 ? "under" : "over")
                + " the fit of the others" + (questioned() ? ": measure again or confirm" : "");
    }
}
