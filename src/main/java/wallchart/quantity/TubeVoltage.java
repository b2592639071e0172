package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Peak tube voltage set on the generator.
 *
 * <p>Held in kilovolts with 1 decimal place, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param kilovolts the value in kilovolts, zero or more
 */
public record TubeVoltage(BigDecimal kilovolts) implements Comparable<TubeVoltage> {

    private static final int SCALE = 1;

    public TubeVoltage {
        kilovolts = Decimals.nonNegative("tube voltage (kV)", kilovolts, SCALE);
    }

    /** From a number of kilovolts in plain decimal digits, such as {@code "62.5"}. */
    public static TubeVoltage kilovolts(String digits) {
        return new TubeVoltage(new BigDecimal(digits));
    }

    /** From a whole number of kilovolts. */
    public static TubeVoltage kilovolts(long whole) {
        return new TubeVoltage(BigDecimal.valueOf(whole));
    }

    /** The value in kilovolts, for arithmetic that physics does. */
    public double inKilovolts() {
        return kilovolts.doubleValue();
    }

    @Override
    public int compareTo(TubeVoltage other) {
        return kilovolts.compareTo(other.kilovolts);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(kilovolts) + " kV";
    }
}
