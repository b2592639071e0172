package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Length of one exposure.
 *
 * <p>Held in milliseconds with 3 decimal places, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param milliseconds the value in milliseconds, zero or more
 */
public record ExposureTime(BigDecimal milliseconds) implements Comparable<ExposureTime> {

    private static final int SCALE = 3;

    public ExposureTime {
        milliseconds = Decimals.nonNegative("exposure time (ms)", milliseconds, SCALE);
    }

    /** From a number of milliseconds in plain decimal digits, such as {@code "50"}. */
    public static ExposureTime milliseconds(String digits) {
        return new ExposureTime(new BigDecimal(digits));
    }

    /** From a whole number of milliseconds. */
    public static ExposureTime milliseconds(long whole) {
        return new ExposureTime(BigDecimal.valueOf(whole));
    }

    /** The value in milliseconds, for arithmetic that physics does. */
    public double inMilliseconds() {
        return milliseconds.doubleValue();
    }

    @Override
    public int compareTo(ExposureTime other) {
        return milliseconds.compareTo(other.milliseconds);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(milliseconds) + " ms";
    }
}
