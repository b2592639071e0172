package wallchart.chart;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallchart.equipment.Chamber;
import wallchart.quantity.CurrentTimeProduct;

/** How a row ends the exposure: at a set current-time product, or by automatic exposure control. */
public sealed interface ExposureControl {

    /** The current-time product that the rules scale: what is set, or the back-up that ends a failing AEC exposure. */
    CurrentTimeProduct mAs();

    /** The operator sets the current-time product, over 0. */
    record Manual(CurrentTimeProduct mAs) implements ExposureControl {
        public Manual {
            requirePositive("mAs", mAs);
        }
    }

    /**
     * The AEC ends the exposure.
     *
     * @param chambers at least one
     * @param density density setting, 0 is normal
     * @param backup back-up current-time product, over 0
     */
    record Automatic(Set<Chamber> chambers, int density, CurrentTimeProduct backup) implements ExposureControl {
        public Automatic {
            if (chambers.isEmpty()) {
                throw new IllegalArgumentException("AEC without a chamber: choose left, centre, right or several");
            }
            requirePositive("back-up mAs", backup);
            chambers = Set.copyOf(chambers);
        }

        @Override
        public CurrentTimeProduct mAs() {
            return backup;
        }

        /** The chambers in the order left, centre, right, such as {@code left+right}. */
        public String chamberWords() {
            return new TreeSet<>(chambers).stream().map(Chamber::slug).collect(Collectors.joining("+"));
        }
    }

    private static void requirePositive(String what, CurrentTimeProduct mAs) {
        if (mAs.milliampereSeconds().signum() == 0) {
            throw new IllegalArgumentException(what + " is 0: it must be over 0");
        }
    }
}
