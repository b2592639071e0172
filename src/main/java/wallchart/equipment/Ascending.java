package wallchart.equipment;

import java.util.List;

/** The one check every list of stations needs: not empty, strictly ascending. */
final class Ascending {

    private Ascending() {}

    static <Q extends Comparable<Q>> List<Q> require(String what, List<Q> values) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException(what + ": at least one station is needed");
        }
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i - 1).compareTo(values.get(i)) >= 0) {
                throw new IllegalArgumentException(what + ": " + values.get(i) + " follows " + values.get(i - 1)
                        + "; write them ascending, each once");
            }
        }
        return List.copyOf(values);
    }
}
