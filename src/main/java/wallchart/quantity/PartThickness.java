package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Thickness of the part along the central ray, the part positioned as for the exposure, calipers not compressing.
 *
 * <p>Held in centimetres with 2 decimal places, so that 1.6 and a stored 1.60 are equal. Never negative.
 *
 * @param centimetres the value in centimetres, zero or more
 */
public record PartThickness(BigDecimal centimetres) implements Comparable<PartThickness> {

    private static final int SCALE = 2;

    public PartThickness {
        centimetres = Decimals.nonNegative("part thickness (cm)", centimetres, SCALE);
    }

    /** From a number of centimetres in plain decimal digits, such as {@code "12.4"}. */
    public static PartThickness centimetres(String digits) {
        return new PartThickness(new BigDecimal(digits));
    }

    /** From a whole number of centimetres. */
    public static PartThickness centimetres(long whole) {
        return new PartThickness(BigDecimal.valueOf(whole));
    }

    /** The value in centimetres, for arithmetic that physics does. */
    public double inCentimetres() {
        return centimetres.doubleValue();
    }

    @Override
    public int compareTo(PartThickness other) {
        return centimetres.compareTo(other.centimetres);
    }

    /** The value with its unit, as a person writes it. */
    @Override
    public String toString() {
        return Decimals.plain(centimetres) + " cm";
    }
}
