package wallchart.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import wallchart.quantity.Decimals;
import wallchart.quantity.PartThickness;

/**
 * Half-open interval of part thickness: {@code from} belongs to it, {@code to} does not.
 *
 * @param from lower end, included
 * @param to upper end, excluded, over {@code from}
 */
public record Band(PartThickness from, PartThickness to) {

    public Band {
        if (from.compareTo(to) >= 0) {
            throw new IllegalArgumentException(
                    "band from " + from + " to " + to + ": the upper end must lie over the lower");
        }
    }

    /** From two numbers of centimetres in plain digits. */
    public static Band centimetres(String from, String to) {
        return new Band(PartThickness.centimetres(from), PartThickness.centimetres(to));
    }

    public boolean holds(PartThickness thickness) {
        return thickness.compareTo(from) >= 0 && thickness.compareTo(to) < 0;
    }

    public boolean overlaps(Band other) {
        return from.compareTo(other.to) < 0 && other.from.compareTo(to) < 0;
    }

    /** The middle, rounded half up to the scale of a thickness. */
    public PartThickness middle() {
        var sum = from.centimetres().add(to.centimetres());
        return new PartThickness(sum.divide(BigDecimal.valueOf(2), 2, RoundingMode.HALF_UP));
    }

    /** As it stands in a row key: {@code 10-13}. */
    @Override
    public String toString() {
        return Decimals.plain(from.centimetres()) + "-" + Decimals.plain(to.centimetres());
    }
}
