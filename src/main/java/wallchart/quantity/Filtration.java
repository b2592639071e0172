package wallchart.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * Metal in the beam between target and patient: millimetres of aluminium and of copper.
 *
 * @param aluminiumMillimetres zero or more, two decimal places
 * @param copperMillimetres zero or more, two decimal places
 */
public record Filtration(BigDecimal aluminiumMillimetres, BigDecimal copperMillimetres) {

    private static final int SCALE = 2;
    private static final String NUMBER = "[0-9]{1,3}(?:\\.[0-9]{1,4})?";
    private static final Pattern WRITTEN =
            Pattern.compile("(?=.)(?:(?<al>" + NUMBER + ") mm Al)?(?:(?:^| \\+ )(?<cu>" + NUMBER + ") mm Cu)?");

    /** No metal at all. */
    public static final Filtration NONE = new Filtration(BigDecimal.ZERO, BigDecimal.ZERO);

    public Filtration {
        aluminiumMillimetres = Decimals.nonNegative("filtration (mm Al)", aluminiumMillimetres, SCALE);
        copperMillimetres = Decimals.nonNegative("filtration (mm Cu)", copperMillimetres, SCALE);
    }

    /** Aluminium only. */
    public static Filtration aluminium(String millimetres) {
        return new Filtration(new BigDecimal(millimetres), BigDecimal.ZERO);
    }

    /**
     * From text as {@link #toString} writes it: {@code none}, {@code 0.1 mm Cu}, {@code 1 mm Al + 0.1 mm Cu}.
     *
     * @throws IllegalArgumentException if the text is anything else
     */
    public static Filtration parse(String text) {
        if (text.strip().equals("none")) {
            return NONE;
        }
        var written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            throw new IllegalArgumentException(
                    "filtration is \"" + text + "\": write none, 0.1 mm Cu, 1 mm Al, or 1 mm Al + 0.1 mm Cu");
        }
        return new Filtration(number(written.group("al")), number(written.group("cu")));
    }

    private static BigDecimal number(String digits) {
        return digits == null ? BigDecimal.ZERO : new BigDecimal(digits);
    }

    /** This filtration with another in the same beam. */
    public Filtration and(Filtration other) {
        return new Filtration(
                aluminiumMillimetres.add(other.aluminiumMillimetres), copperMillimetres.add(other.copperMillimetres));
    }

    public boolean isNone() {
        return equals(NONE);
    }

    @Override
    public String toString() {
        if (isNone()) {
            return "none";
        }
        var aluminium = aluminiumMillimetres.signum() == 0 ? "" : Decimals.plain(aluminiumMillimetres) + " mm Al";
        var copper = copperMillimetres.signum() == 0 ? "" : Decimals.plain(copperMillimetres) + " mm Cu";
        return aluminium.isEmpty() || copper.isEmpty() ? aluminium + copper : aluminium + " + " + copper;
    }
}
