package wallchart.planning;

import java.util.List;
import wallchart.quantity.Decimals;

/** How computed numbers and long lists are written in sentences. */
final class Figures {

    private static final int DIGITS = 4;
    private static final int LISTED = 6;

    private Figures() {}

    static String number(double value) {
        return Decimals.significant(value, DIGITS);
    }

    /** The first few, and how many more there are. */
    static String list(List<String> names) {
        var shown = String.join(", ", names.subList(0, Math.min(LISTED, names.size())));
        return names.size() <= LISTED ? shown : shown + " and " + (names.size() - LISTED) + " more";
    }
}
