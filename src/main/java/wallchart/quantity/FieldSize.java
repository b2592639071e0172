package wallchart.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * A rectangle in the receptor plane: an image receptor, or the part of it that the beam is collimated to.
 *
 * @param widthCentimetres shorter side, more than zero, one decimal place
 * @param lengthCentimetres longer side, not under the shorter, one decimal place
 */
public record FieldSize(BigDecimal widthCentimetres, BigDecimal lengthCentimetres) {

    private static final int SCALE = 1;
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?) ?x ?([0-9]{1,4}(?:\\.[0-9]{1,3})?)");

    public FieldSize {
        widthCentimetres = Decimals.nonNegative("field width (cm)", widthCentimetres, SCALE);
        lengthCentimetres = Decimals.nonNegative("field length (cm)", lengthCentimetres, SCALE);
        if (widthCentimetres.signum() == 0 || widthCentimetres.compareTo(lengthCentimetres) > 0) {
            throw new IllegalArgumentException("field size is " + Decimals.plain(widthCentimetres) + "x"
                    + Decimals.plain(lengthCentimetres) + " cm: write the shorter side first, neither of them 0");
        }
    }

    /**
     * From text such as {@code 24x30}, in centimetres, shorter side first.
     *
     * @throws IllegalArgumentException if the text is anything else
     */
    public static FieldSize parse(String text) {
        var sides = WRITTEN.matcher(text.strip());
        if (!sides.matches()) {
            throw new IllegalArgumentException("field size is \"" + text + "\": write it as 24x30, in cm");
        }
        return new FieldSize(new BigDecimal(sides.group(1)), new BigDecimal(sides.group(2)));
    }

    /** Area in square centimetres. */
    public double areaSquareCentimetres() {
        return widthCentimetres.doubleValue() * lengthCentimetres.doubleValue();
    }

    /** Whether this rectangle lies inside the other, in either orientation. */
    public boolean fitsIn(FieldSize other) {
        return widthCentimetres.compareTo(other.widthCentimetres) <= 0
                && lengthCentimetres.compareTo(other.lengthCentimetres) <= 0;
    }

    /** As in {@link #parse}: {@code 24x30}. */
    @Override
    public String toString() {
        return Decimals.plain(widthCentimetres) + "x" + Decimals.plain(lengthCentimetres);
    }
}
