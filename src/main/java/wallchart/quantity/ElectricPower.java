package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Electric power a focal spot is loaded with, or may be loaded with.
 *
 * <p>Held in kilowatts with 3 decimal places, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param kilowatts the value in kilowatts, zero or more
 */
public record ElectricPower(BigDecimal kilowatts) implements Comparable<ElectricPower> {

    private static final int SCALE = 3;

    public ElectricPower {
        kilowatts = Decimals.nonNegative("electric power (kW)", kilowatts, SCALE);
    }

    /** From a number of kilowatts in plain decimal digits, such as {@code "32"}. */
    public static ElectricPower kilowatts(String digits) {
        return new ElectricPower(new BigDecimal(digits));
    }

    /** From a whole number of kilowatts. */
    public static ElectricPower kilowatts(long whole) {
        return new ElectricPower(BigDecimal.valueOf(whole));
    }

    /** The value in kilowatts, for arithmetic that physics does. */
    public double inKilowatts() {
        return kilowatts.doubleValue();
    }

    @Override
    public int compareTo(ElectricPower other) {
        return kilowatts.compareTo(other.kilowatts);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(kilowatts) + " kW";
    }
}
