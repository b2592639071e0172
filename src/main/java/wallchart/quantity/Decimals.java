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
        return withoutTrailingZeros(value.toPlainString());
    }

    /**
     * A computed value to the given number of significant digits, or to a whole number where that has more, as {@link #plain}
     * writes it; for reading, not for further arithmetic. Rounds half away from zero.
     *
     * @param digits 1 to 9
     */
    public static String significant(double value, int digits) {
        if (value < 0) {
            var positive = significant(-value, digits);
            return positive.equals("0") ? positive : "-" + positive;
        }
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : Double.toString(value);
        }
        int decimals = digits - 1 - (int) Math.floor(Math.log10(value));
        if (decimals <= 0 && value < POWERS_OF_TEN[POWERS_OF_TEN.length - 1]) {
            return Long.toString(Math.round(value));
        }
        if (decimals <= 0 || decimals >= POWERS_OF_TEN.length) {
            return plain(BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
        }
        return withoutTrailingZeros(pointed(Math.round(value * POWERS_OF_TEN[decimals]), decimals));
    }

    private static String pointed(long scaled, int decimals) {
        var digits = Long.toString(scaled);
        int whole = digits.length() - decimals;
        return whole > 0
                ? digits.substring(0, whole) + "." + digits.substring(whole)
                : "0." + "0".repeat(-whole) + digits;
    }

    private static String withoutTrailingZeros(String digits) {
        if (digits.indexOf('.') < 0) {
            return digits;
        }
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        return digits.substring(0, digits.charAt(end - 1) == '.' ? end - 1 : end);
    }

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
}
