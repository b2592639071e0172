package wallchart.equipment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wallchart.quantity.Distance;
import wallchart.quantity.TubeVoltage;

/**
 * An anti-scatter grid and the site's own conversion factor for it: mAs with the grid over mAs without, at equal receptor
 * exposure.
 *
 * @param id short name on this site, such as {@code g10}; never {@code none}
 * @param ratio grid ratio n of n:1, 2 to 20
 * @param linesPerCentimetre strip frequency, over 0
 * @param focalDistance absent for a parallel grid
 * @param focalRange distances at which the grid may be used without cut-off; absent for a parallel grid without stated limits
 * @param factors conversion factor by ascending tube voltage, each at least 1
 */
public record Grid(
        String id,
        BigDecimal ratio,
        BigDecimal linesPerCentimetre,
        Optional<Distance> focalDistance,
        Optional<DistanceRange> focalRange,
        List<Factor> factors) {

    /** What a row or a query says where no grid is used. */
    public static final String NONE = "none";

    private static final BigDecimal SMALLEST_RATIO = new BigDecimal("2");
    private static final BigDecimal LARGEST_RATIO = new BigDecimal("20");

    /** Conversion factor at one tube voltage. */
    public record Factor(TubeVoltage kV, BigDecimal factor) {}

    public Grid {
        Slugs.require("grid id", id);
        if (id.equals(NONE)) {
            throw new IllegalArgumentException("grid id is \"none\": that word means no grid");
        }
        if (ratio.compareTo(SMALLEST_RATIO) < 0 || ratio.compareTo(LARGEST_RATIO) > 0) {
            throw new IllegalArgumentException("grid ratio is " + ratio.toPlainString() + ":1: it lies within "
                    + SMALLEST_RATIO + ":1 and " + LARGEST_RATIO + ":1");
        }
        if (linesPerCentimetre.signum() <= 0) {
            throw new IllegalArgumentException("grid lines per cm is " + linesPerCentimetre + ": it must be over 0");
        }
        requireFocusInRange(focalDistance, focalRange);
        Ascending.require(
                "kV of the grid factors", factors.stream().map(Factor::kV).toList());
        for (var factor : factors) {
            if (factor.factor().compareTo(BigDecimal.ONE) < 0) {
                throw new IllegalArgumentException("grid factor at " + factor.kV() + " is "
                        + factor.factor().toPlainString() + ": a grid never lowers the mAs, so at least 1");
            }
        }
        factors = List.copyOf(factors);
    }

    private static void requireFocusInRange(Optional<Distance> focus, Optional<DistanceRange> range) {
        if (focus.isPresent() && range.isEmpty()) {
            throw new IllegalArgumentException("a focused grid needs its focal range");
        }
        if (focus.isPresent() && !range.get().contains(focus.get())) {
            throw new IllegalArgumentException(
                    "grid focal distance " + focus.get() + " lies outside its focal range " + range.get());
        }
    }

    /** Conversion factor at a tube voltage: linear between tabulated kV, the ends held. */
    public double factorAt(double kV) {
        var first = factors.get(0);
        if (kV <= first.kV().inKilovolts()) {
            return first.factor().doubleValue();
        }
        for (int i = 1; i < factors.size(); i++) {
            var high = factors.get(i);
            if (kV <= high.kV().inKilovolts()) {
                return between(factors.get(i - 1), high, kV);
            }
        }
        return factors.get(factors.size() - 1).factor().doubleValue();
    }

    private static double between(Factor low, Factor high, double kV) {
        double share = (kV - low.kV().inKilovolts())
                / (high.kV().inKilovolts() - low.kV().inKilovolts());
        return low.factor().doubleValue()
                + share * (high.factor().doubleValue() - low.factor().doubleValue());
    }
}
