package wallchart.equipment;

import java.util.List;
import wallchart.quantity.CurrentTimeProduct;

/**
 * The current-time products a generator can be set to, ascending.
 *
 * <p>Immutable. Kept a second time as plain numbers, as in {@link VoltageStations}.
 */
public final class CurrentTimeStations {

    private static final CurrentTimeProduct LARGEST_SENSIBLE = CurrentTimeProduct.milliampereSeconds(2000);
    /** Two ratios closer than this are the same: a tie. */
    private static final double TIE = 1e-12;
    /** With one station only: half an R10 step, as a factor. */
    private static final double HALF_R10_STEP = Math.pow(10, 0.05);

    private final List<CurrentTimeProduct> stations;
    private final double[] milliampereSeconds;

    /** @param given at least one, strictly ascending, over 0 and up to 2000 mAs */
    public CurrentTimeStations(List<CurrentTimeProduct> given) {
        stations = Ascending.require("mAs stations", given);
        milliampereSeconds = stations.stream()
                .mapToDouble(CurrentTimeProduct::inMilliampereSeconds)
                .toArray();
        if (stations.get(0).milliampereSeconds().signum() == 0
                || stations.get(stations.size() - 1).compareTo(LARGEST_SENSIBLE) > 0) {
            throw new IllegalArgumentException("mAs stations run from " + stations.get(0) + " to "
                    + stations.get(stations.size() - 1) + ": they lie over 0 and up to " + LARGEST_SENSIBLE);
        }
    }

    /** The stations, ascending. */
    public List<CurrentTimeProduct> stations() {
        return stations;
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
        int upper = 0;
        while (upper < milliampereSeconds.length && milliampereSeconds[upper] < mAs) {
            upper++;
        }
        if (upper == 0 || upper == milliampereSeconds.length) {
            return upper == 0 ? smallest() : largest();
        }
        boolean lowerIsNearer = mAs * mAs <= milliampereSeconds[upper - 1] * milliampereSeconds[upper] * (1 + TIE);
        return stations.get(lowerIsNearer ? upper - 1 : upper);
    }

    /** Whether a computed current-time product lies beyond the largest station by more than half a step. */
    public boolean isAbove(double mAs) {
        int last = stations.size() - 1;
        return mAs > milliampereSeconds[last] * halfStep(last - 1, last);
    }

    /** Whether a computed current-time product lies below the smallest station by more than half a step. */
    public boolean isBelow(double mAs) {
        return mAs < milliampereSeconds[0] / halfStep(0, 1);
    }

    private double halfStep(int lower, int upper) {
        return stations.size() == 1 ? HALF_R10_STEP : Math.sqrt(milliampereSeconds[upper] / milliampereSeconds[lower]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CurrentTimeStations that && stations.equals(that.stations);
    }

    @Override
    public int hashCode() {
        return stations.hashCode();
    }

    @Override
    public String toString() {
        return stations.toString();
    }
}
