package wallchart.equipment;

import wallchart.quantity.Decimals;
import wallchart.quantity.Distance;

/**
 * Distances from one to another, both included.
 *
 * @param from over 0
 * @param to not under from
 */
public record DistanceRange(Distance from, Distance to) {

    public DistanceRange {
        if (from.centimetres().signum() == 0 || from.compareTo(to) > 0) {
            throw new IllegalArgumentException(
                    "distance range " + from + " to " + to + ": from must be over 0 and not over to");
        }
    }

    public boolean contains(Distance distance) {
        return distance.compareTo(from) >= 0 && distance.compareTo(to) <= 0;
    }

    /** The distance of the range nearest to another. */
    public Distance nearest(Distance other) {
        return other.compareTo(from) < 0 ? from : other.compareTo(to) > 0 ? to : other;
    }

    @Override
    public String toString() {
        return Decimals.plain(from.centimetres()) + " to " + to;
    }
}
