package wallchart.chart;

import java.math.BigDecimal;
import wallchart.equipment.Slugs;
import wallchart.quantity.Decimals;

/**
 * A named adjustment of the site for what the thickness does not show: a cast, a condition.
 *
 * @param name slug that a query asks for
 * @param label words for people
 * @param effect adds kV or multiplies mAs, never both
 * @param notes when to use it; may be empty
 */
public record Adjustment(String name, String label, Effect effect, String notes) {

    public Adjustment {
        Slugs.require("adjustment", name);
        label = label.strip();
        notes = notes.strip();
        if (label.isEmpty()) {
            throw new IllegalArgumentException("adjustment " + name + " has no label: write the words staff read");
        }
    }

    /** What it does. */
    public sealed interface Effect {}

    /** Adds kilovolts, or takes them away; not 0, within 30 kV either way. */
    public record AddKilovolts(BigDecimal kV) implements Effect {
        private static final BigDecimal MOST = BigDecimal.valueOf(30);

        public AddKilovolts {
            if (kV.signum() == 0
                    || kV.abs().compareTo(MOST) > 0
                    || kV.stripTrailingZeros().scale() > 1) {
                throw new IllegalArgumentException("an adjustment adds " + kV.toPlainString() + " kV: not 0, within "
                        + Decimals.plain(MOST) + " either way, at most 1 decimal place");
            }
            kV = kV.setScale(1);
        }
    }

    /** Multiplies the mAs by a factor of 0.1 to 10, not 1. */
    public record MultiplyCurrentTime(BigDecimal factor) implements Effect {
        private static final BigDecimal LEAST = new BigDecimal("0.1");

        public MultiplyCurrentTime {
            if (factor.compareTo(LEAST) < 0
                    || factor.compareTo(BigDecimal.TEN) > 0
                    || factor.compareTo(BigDecimal.ONE) == 0
                    || factor.stripTrailingZeros().scale() > 3) {
                throw new IllegalArgumentException("an adjustment multiplies the mAs by " + factor.toPlainString()
                        + ": 0.1 to 10, not 1, at most 3 decimal places");
            }
            factor = factor.setScale(3);
        }
    }
}
