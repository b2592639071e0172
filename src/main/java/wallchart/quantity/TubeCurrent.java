package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Tube current on one focal spot.
 *
 * <p>Held in milliamperes with 1 decimal place, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param milliamperes the value in milliamperes, zero or more
 */
public record TubeCurrent(BigDecimal milliamperes) implements Comparable<TubeCurrent> {

    private static final int SCALE = 1;

    public TubeCurrent {
        milliamperes = Decimals.nonNegative("tube current (mA)", milliamperes, SCALE);
    }

    /** From a number of milliamperes in plain decimal digits, such as {@code "250"}. */
    public static TubeCurrent milliamperes(String digits) {
        return new TubeCurrent(new BigDecimal(digits));
    }

    /** From a whole number of milliamperes. */
    public static TubeCurrent milliamperes(long whole) {
        return new TubeCurrent(BigDecimal.valueOf(whole));
    }

    /** The value in milliamperes, for arithmetic that physics does. */
    public double inMilliamperes() {
        return milliamperes.doubleValue();
    }

    @Override
    public int compareTo(TubeCurrent other) {
        return milliamperes.compareTo(other.milliamperes);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(milliamperes) + " mA";
    }
}
