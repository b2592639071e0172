package wallchart.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Tube current multiplied by exposure time: what a manual exposure sets.
 *
 * <p>Held in milliampere-seconds with 3 decimal places, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param milliampereSeconds the value in milliampere-seconds, zero or more
 */
public record CurrentTimeProduct(BigDecimal milliampereSeconds) implements Comparable<CurrentTimeProduct> {

    private static final int SCALE = 3;

    public CurrentTimeProduct {
        milliampereSeconds = Decimals.nonNegative("current-time product (mAs)", milliampereSeconds, SCALE);
    }

    /** From a number of milliampere-seconds in plain decimal digits, such as {@code "12.5"}. */
    public static CurrentTimeProduct milliampereSeconds(String digits) {
        return new CurrentTimeProduct(new BigDecimal(digits));
    }

    /** From a whole number of milliampere-seconds. */
    public static CurrentTimeProduct milliampereSeconds(long whole) {
        return new CurrentTimeProduct(BigDecimal.valueOf(whole));
    }

    /** How long a tube current flows to make this product, to the microsecond, halves up (reciprocity: mAs = mA x s). */
    public ExposureTime timeAt(TubeCurrent mA) {
        return new ExposureTime(
                milliampereSeconds.movePointRight(3).divide(mA.milliamperes(), 3, RoundingMode.HALF_UP));
    }

    /** The value in milliampere-seconds, for arithmetic that physics does. */
    public double inMilliampereSeconds() {
        return milliampereSeconds.doubleValue();
    }

    @Override
    public int compareTo(CurrentTimeProduct other) {
        return milliampereSeconds.compareTo(other.milliampereSeconds);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(milliampereSeconds) + " mAs";
    }
}
