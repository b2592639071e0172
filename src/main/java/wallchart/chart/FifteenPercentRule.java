package wallchart.chart;

/**
 * The 15 % rule as a power law: 15 % more tube voltage does the work of twice the mAs, so mAs times kV to the power n stays the
 * same. Common practice, no source; the power law makes it its own inverse.
 */
public final class FifteenPercentRule {

    /** n = ln 2 / ln 1.15, about 4.96. */
    public static final double EXPONENT = Math.log(2) / Math.log(1.15);

    private FifteenPercentRule() {}

    /** What the mAs is multiplied by when the tube voltage goes from one to another and the receptor exposure stays. */
    public static double currentTimeFactor(double fromKV, double toKV) {
        return Math.pow(fromKV / toKV, EXPONENT);
    }
}
