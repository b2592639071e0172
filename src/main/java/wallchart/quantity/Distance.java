package wallchart.quantity;

import java.math.BigDecimal;

/**
 * A distance along the beam: source to image receptor (SID), source to skin, or an air gap.
 *
 * <p>Held in centimetres with 4 decimal places, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param centimetres the value in centimetres, zero or more
 */
public record Distance(BigDecimal centimetres) implements Comparable<Distance> {

    private static final int SCALE = 4;
    private static final BigDecimal CENTIMETRES_PER_INCH = new BigDecimal("2.54");

    public Distance {
        centimetres = Decimals.nonNegative("distance (cm)", centimetres, SCALE);
    }

    /** From a number of centimetres in plain decimal digits, such as {@code "111.76"}. */
    public static Distance centimetres(String digits) {
        return new Distance(new BigDecimal(digits));
    }

    /** From a whole number of centimetres. */
    public static Distance centimetres(long whole) {
        return new Distance(BigDecimal.valueOf(whole));
    }

    /** From inches; 1 in is 2.54 cm exactly (international inch, 1959). At most two decimal places. */
    public static Distance inches(BigDecimal inches) {
        if (inches.stripTrailingZeros().scale() > 2) {
            throw new IllegalArgumentException(
                    "distance (in) is " + inches.toPlainString() + ": at most 2 decimal places");
        }
        return new Distance(inches.multiply(CENTIMETRES_PER_INCH));
    }

    /** The value in centimetres, for arithmetic that physics does. */
    public double inCentimetres() {
        return centimetres.doubleValue();
    }

    @Override
    public int compareTo(Distance other) {
        return centimetres.compareTo(other.centimetres);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(centimetres) + " cm";
    }
}
