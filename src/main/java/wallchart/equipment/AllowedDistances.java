package wallchart.equipment;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import wallchart.quantity.Decimals;
import wallchart.quantity.Distance;

/** The source-to-receptor distances at which a support can be used: a continuous range, or stops. */
public sealed interface AllowedDistances {

    boolean allows(Distance sid);

    /** The allowed distance nearest to another; a tie goes to the shorter. */
    Distance nearest(Distance sid);

    /** Anything within a range. */
    record Within(DistanceRange range) implements AllowedDistances {
        @Override
        public boolean allows(Distance sid) {
            return range.contains(sid);
        }

        @Override
        public Distance nearest(Distance sid) {
            return range.nearest(sid);
        }

        @Override
        public String toString() {
            return range.toString();
        }
    }

    /** Fixed stops only, ascending. */
    record Stops(List<Distance> stops) implements AllowedDistances {
        public Stops {
            stops = Ascending.require("SID stops", stops);
        }

        @Override
        public boolean allows(Distance sid) {
            return stops.contains(sid);
        }

        @Override
        public Distance nearest(Distance sid) {
            return stops.stream()
                    .min(Comparator.comparing(stop ->
                            stop.centimetres().subtract(sid.centimetres()).abs()))
                    .orElseThrow();
        }

        @Override
        public String toString() {
            return stops.stream()
                            .map(stop -> Decimals.plain(stop.centimetres()))
                            .collect(Collectors.joining(", ")) + " cm";
        }
    }
}
