package wallchart.grading;

/**
 * What a row does to the receptor at one thickness, before any rounding to stations.
 *
 * @param thicknessCm thickness
 * @param kV tube voltage that the row's rules reach
 * @param mAs current-time product that the row's rules reach
 * @param decibels receptor exposure over that of the examination's reference; 0 is equal
 */
public record CurvePoint(double thicknessCm, double kV, double mAs, double decibels) {

    /** The current-time product that, at the same tube voltage, would give the receptor as much as the reference does. */
    public double evenMAs() {
        return mAs / Math.pow(10, decibels / 10);
    }
}
