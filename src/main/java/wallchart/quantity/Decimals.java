package wallchart.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How every decimal quantity is checked and written; kept in one place so that all of them agree. */
public final class Decimals {

    /** Beyond this a number is a slip or an attack: writing 1e999999999 out in digits would take gigabytes. */
    private static final int MOST_DIGITS = 12;

    private Decimals() {}

    /**
     * The value at the given scale.
     *
     * @throws IllegalArgumentException if the value is negative or has more decimal places than the quantity keeps; the
     *     message names the quantity, the value and the limit
     */
    static BigDecimal nonNegative(String quantity, BigDecimal value, int scale) {
        if ((long) value.precision() - value.scale() > MOST_DIGITS || value.scale() > MOST_DIGITS) {
            throw new IllegalArgumentException(quantity + " is no number of this size: at most " + MOST_DIGITS
                    + " digits before and behind the decimal point");
        }
        if (value.signum() < 0) {
            throw new IllegalArgumentException(quantity + " is " + value.toPlainString() + ": it cannot be negative");
        }
        try {
            return value.setScale(scale, RoundingMode.UNNECESSARY);
        } catch (ArithmeticException tooFine) {
            throw new IllegalArgumentException(quantity + " is " + value.toPlainString() + ": at most " + scale
                    + " decimal place" + (scale == 1 ? "" : "s"));
        }
    }

    /** The value as a person writes it: no exponent, no trailing zeros. */
    public static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** A computed value to the given number of significant digits, for reading; not for further arithmetic. */
    public static BigDecimal significant(double value, int digits) {
        var rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        var shortest = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }
}
