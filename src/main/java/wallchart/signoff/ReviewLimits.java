package wallchart.signoff;

/**
 * How far a change may move one row before the medical physicist has to concur. The defaults are the site's to change; no
 * standard seen sets them: 1.0 dB is 26 % more or less at the receptor (10^0.1 = 1.259).
 *
 * @param maxExposureShiftDb largest shift of the receptor exposure either way, in dB; over 0, at most 10
 * @param maxKermaRisePercent largest rise of the entrance air kerma, in percent; 0 to 1000
 */
public record ReviewLimits(double maxExposureShiftDb, int maxKermaRisePercent) {

    /** What holds where a site has chosen nothing. */
    public static final ReviewLimits DEFAULTS = new ReviewLimits(1.0, 25);

    public ReviewLimits {
        if (!(maxExposureShiftDb > 0) || maxExposureShiftDb > 10) {
            throw new IllegalArgumentException(
                    "largest exposure shift is " + maxExposureShiftDb + " dB: over 0, at most 10");
        }
        if (maxKermaRisePercent < 0 || maxKermaRisePercent > 1000) {
            throw new IllegalArgumentException("largest kerma rise is " + maxKermaRisePercent + " %: 0 to 1000");
        }
    }

    /** Whether a shift, as it is shown, needs a physicist. */
    boolean passedBy(double exposureShiftDb, double kermaChangePercent) {
        return Math.abs(exposureShiftDb) > maxExposureShiftDb || kermaChangePercent > maxKermaRisePercent;
    }
}
