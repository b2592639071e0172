package wallchart.quantity;

import java.math.BigDecimal;

/**
 * Metal in the beam between target and patient: millimetres of aluminium and of copper.
 *
 * @param aluminiumMillimetres zero or more, two decimal places
 * @param copperMillimetres zero or more, two decimal places
 */
public record Filtration(BigDecimal aluminiumMillimetres, BigDecimal copperMillimetres) {

    private static final int SCALE = 2;

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
