package wallchart.technique;

import wallchart.quantity.Decimals;

/** How computed numbers are written in steps and refusals: four significant digits, no exponent. */
final class Words {

    private static final int DIGITS = 4;

    private Words() {}

    /** A computed number for reading. */
    static String number(double value) {
        return Decimals.significant(value, DIGITS);
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
}
