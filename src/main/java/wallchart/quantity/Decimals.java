package wallchart.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

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
        var kept = value.toString(); // which a BigDecimal works out once, unlike toPlainString
        var digits = kept.indexOf('E') < 0 ? kept : value.toPlainString();
        if (digits.indexOf('.') < 0) {
            return digits;
        }
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        return digits.substring(0, digits.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /**
     * A computed value to the given number of significant digits, or to a whole number where that has more, as {@link #plain}
     * writes it; for reading, not for further arithmetic. A tie may go either way, as binary fractions
     * do.
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
        int decimals = Math.max(0, digits - 1 - magnitude(value));
        boolean exact = decimals < POWERS_OF_TEN.length && value < POWERS_OF_TEN[POWERS_OF_TEN.length - 1];
        return exact
                ? shifted(Math.round(value * POWERS_OF_TEN[decimals]), decimals)
                : plain(BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
    }

    /** The exponent of the value written as d.ddd x 10^exponent; where it is below -15, -16. */
    private static int magnitude(double value) {
        int exponent = 0;
        while (exponent + 1 < POWERS_OF_TEN.length && value >= POWERS_OF_TEN[exponent + 1]) {
            exponent++;
        }
        int down = 0;
        while (down < POWERS_OF_TEN.length && value * POWERS_OF_TEN[down] < 1) {
            down++;
        }
        return exponent - down;
    }

    /** So many units of the last of so many decimals, without trailing zeros. Written from the end; every answer has a hundred. */
    private static String shifted(long units, int decimals) {
        while (decimals > 0 && units % TEN == 0) {
            units /= TEN;
            decimals--;
        }
        byte[] written = new byte[LONGEST];
        int start = LONGEST;
        for (int place = 0; units > 0 || place <= decimals; place++) {
            if (place == decimals && decimals > 0) {
                written[--start] = '.';
            }
            written[--start] = (byte) ('0' + units % TEN);
            units /= TEN;
        }
        return new String(written, start, LONGEST - start, StandardCharsets.ISO_8859_1);
    }

    private static final int TEN = 10;

    /** Nineteen digits of a long, or fifteen decimals and one digit before them, and the point. */
    private static final int LONGEST = 24;

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
}
