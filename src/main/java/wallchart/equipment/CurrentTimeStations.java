package wallchart.equipment;

import java.util.List;
import wallchart.quantity.CurrentTimeProduct;

/**
 * The current-time products a generator can be set to, ascending.
 *
 * @param stations at least one, strictly ascending, over 0 and up to 2000 mAs
 */
public record CurrentTimeStations(List<CurrentTimeProduct> stations) {

    private static final CurrentTimeProduct LARGEST_SENSIBLE = CurrentTimeProduct.milliampereSeconds(2000);
    /** Two ratios closer than this are the same: a tie, or a bound that is met. */
    private static final double TIE = 1e-12;
    /** With one station only: half an R10 step, as a factor. */
    private static final double HALF_R10_STEP = Math.pow(10, 0.05);

    public CurrentTimeStations {
        stations = Ascending.require("mAs stations", stations);
        if (stations.get(0).milliampereSeconds().signum() == 0
                || stations.get(stations.size() - 1).compareTo(LARGEST_SENSIBLE) > 0) {
            throw new IllegalArgumentException("mAs stations run from " + stations.get(0) + " to "
                    + stations.get(stations.size() - 1) + ": they lie over 0 and up to " + LARGEST_SENSIBLE);
        }
    }

    public CurrentTimeProduct smallest() {
        return stations.get(0);
    }

    public CurrentTimeProduct largest() {
        return stations.get(stations.size() - 1);
    }

    public boolean has(CurrentTimeProduct mAs) {
        return stations.contains(mAs);
    }

    /**
     * The station nearest to a computed current-time product over 0 on a logarithmic scale; a tie goes to the lower.
     *
     * <p>The middle of two stations on that scale is the root of their product.
     */
    public CurrentTimeProduct nearest(double mAs) {
        var lower = smallest();
        for (var station : stations) {
            double upper = station.inMilliampereSeconds();
            if (upper >= mAs) {
                return mAs * mAs <= lower.inMilliampereSeconds() * upper * (1 + TIE) ? lower : station;
            }
            lower = station;
        }
        return lower;
    }

    /** Whether a computed current-time product lies beyond the largest station by more than half a step. */
    public boolean isAbove(double mAs) {
        int last = stations.size() - 1;
        return mAs > largest().inMilliampereSeconds() * halfStep(last - 1, last);
    }

    /** Whether a computed current-time product lies below the smallest station by more than half a step. */
    public boolean isBelow(double mAs) {
        return mAs < smallest().inMilliampereSeconds() / halfStep(0, 1);
    }

    private double halfStep(int lower, int upper) {
        return stations.size() == 1
                ? HALF_R10_STEP
                : Math.sqrt(stations.get(upper).inMilliampereSeconds()
                        / stations.get(lower).inMilliampereSeconds());
    }
}
