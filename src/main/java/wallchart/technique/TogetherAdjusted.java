package wallchart.technique;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.chart.Adjustment;
import wallchart.quantity.Decimals;

/**
 * What to say where several named adjustments are asked for at once. A chart defines each alone and does not say which exclude each
 * other, so nothing is refused: an effusion behind a cast is possible, a cast that is wet and dry is not.
 */
final class TogetherAdjusted {

    private TogetherAdjusted() {}

    /** Nothing for one adjustment, or none. */
    static Optional<String> caution(List<Adjustment> adjustments) {
        if (adjustments.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(adjustments.stream().map(Adjustment::label).collect(Collectors.joining(" and "))
                + " add up, " + total(adjustments)
                + " in all: each was defined alone; check that they do not stand for the same thing");
    }

    private static String total(List<Adjustment> adjustments) {
        var factor = BigDecimal.ONE;
        var more = BigDecimal.ZERO;
        for (var adjustment : adjustments) {
            if (adjustment.effect() instanceof Adjustment.MultiplyCurrentTime by) {
                factor = factor.multiply(by.factor());
            } else if (adjustment.effect() instanceof Adjustment.AddKilovolts add) {
                more = more.add(add.kV());
            }
        }
        var parts = new ArrayList<String>();
        if (factor.compareTo(BigDecimal.ONE) != 0) {
            parts.add("mAs x " + Words.number(factor.doubleValue()));
        }
        if (more.signum() != 0) {
            parts.add((more.signum() > 0 ? "+" : "") + Decimals.plain(more) + " kV");
        }
        return parts.isEmpty() ? "nothing" : String.join(" and ", parts);
    }
}
