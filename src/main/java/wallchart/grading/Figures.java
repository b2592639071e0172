package wallchart.grading;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.quantity.Decimals;

/** How predicted numbers are written: two significant digits, which is all that a water slab is good for. */
final class Figures {

    private static final double PERCENT = 100;

    private static final int TENTHS = 10;

    /** More than this many others of a kind are counted, not listed. */
    private static final int NAMED = 4;

    private Figures() {}

    /** A predicted number. */
    static String two(double value) {
        return Decimals.significant(value, 2);
    }

    /** The number as {@link #two} shows it: findings are judged by what is read. */
    static double shown(double value) {
        return new BigDecimal(two(value)).doubleValue();
    }

    /** A number that people set or measured, with as many digits as they give it. */
    static String plain(double value) {
        return Decimals.significant(value, 4);
    }

    /** A deviation in dB with its sign. */
    static String signedDb(double decibels) {
        return signed(decibels) + " dB";
    }

    /** With its sign. */
    static String signed(double value) {
        return (value > 0 ? "+" : "") + two(value);
    }

    /** By how many percent a ratio is over 1, to a tenth: what is smaller is noise of the arithmetic. */
    static double percentMore(double ratio) {
        return Math.round((ratio - 1) * PERCENT * TENTHS) / (double) TENTHS;
    }

    /** How much more or less a ratio is, such as {@code 16 % less}; {@code as much} where a tenth of a percent does not show it. */
    static String moreOrLess(double ratio) {
        double percent = percentMore(ratio);
        if (percent == 0) {
            return "as much";
        }
        return two(Math.abs(percent)) + (percent < 0 ? " % less" : " % more");
    }

    /** All but the first, in short; beyond a few they are counted. Empty where there is one only. */
    static <T> String others(List<T> all, Function<T, String> figure) {
        if (all.size() == 1) {
            return "";
        }
        int more = all.size() - 1 - NAMED;
        return "; also " + all.stream().skip(1).limit(NAMED).map(figure).collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more" : "");
    }
}
