package wallchart.technique;

import java.math.BigDecimal;

/** How computed numbers are written in steps and refusals: four significant digits, no exponent. */
final class Words {

    private static final int DIGITS = 4;

    private Words() {}

    /** A computed number for reading. */
    static String number(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : Double.toString(value);
        }
        if (value < 0) {
            return "-" + number(-value);
        }
        int decimals = DIGITS - 1 - (int) Math.floor(Math.log10(value));
        if (decimals <= 0) {
            return Long.toString(Math.round(value));
        }
        if (decimals > 15) {
            return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }
        long scaled = Math.round(value * POWERS_OF_TEN[decimals]);
        return BigDecimal.valueOf(scaled, decimals).stripTrailingZeros().toPlainString();
    }

    /** A deviation in dB with its sign, to a hundredth: finer than any exposure is reproduced. */
    static String decibels(double value) {
        double hundredths = Math.round(value * 100) / 100.0;
        return signed(hundredths) + " dB";
    }

    /** A change with its sign. */
    static String signed(double value) {
        return (value > 0 ? "+" : "") + number(value);
    }

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
}
