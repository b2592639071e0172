package wallchart.equipment;

import java.util.List;
import java.util.Optional;
import wallchart.quantity.TubeVoltage;

/**
 * The tube voltages a generator can be set to, ascending.
 *
 * <p>Immutable. The values are kept a second time as plain numbers, side by side in memory: every technique searches them, and in
 * a department of hundreds of rooms each step from station to number would be a wait for memory.
 */
public final class VoltageStations {

    private static final TubeVoltage LOWEST_SENSIBLE = TubeVoltage.kilovolts(20);
    private static final TubeVoltage HIGHEST_SENSIBLE = TubeVoltage.kilovolts(200);

    /** Two distances that differ by less than this are a tie: sums of decimal steps miss the half by some 1e-14 kV. */
    private static final double HALFWAY = 1e-9;

    private final List<TubeVoltage> stations;
    private final double[] kilovolts;

    /** @param given at least one, strictly ascending, within 20 to 200 kV */
    public VoltageStations(List<TubeVoltage> given) {
        stations = Ascending.require("kV stations", given);
        kilovolts = stations.stream().mapToDouble(TubeVoltage::inKilovolts).toArray();
        if (stations.get(0).compareTo(LOWEST_SENSIBLE) < 0
                || stations.get(stations.size() - 1).compareTo(HIGHEST_SENSIBLE) > 0) {
            throw new IllegalArgumentException("kV stations run from " + stations.get(0) + " to "
                    + stations.get(stations.size() - 1) + ": a diagnostic generator lies within " + LOWEST_SENSIBLE
                    + " and "
                    + HIGHEST_SENSIBLE);
        }
    }

    /** The stations, ascending. */
    public List<TubeVoltage> stations() {
        return stations;
    }

    public TubeVoltage lowest() {
        return stations.get(0);
    }

    public TubeVoltage highest() {
        return stations.get(stations.size() - 1);
    }

    public boolean has(TubeVoltage kV) {
        return stations.contains(kV);
    }

    /**
     * The station nearest to a computed tube voltage among those from {@code from} to {@code to}; halfway goes up. Empty when no
     * station lies between the two.
     */
    public Optional<TubeVoltage> nearest(double kV, double from, double to) {
        int first = firstNotUnder(from);
        int last = firstNotUnder(Math.nextUp(to)) - 1;
        if (first > last) {
            return Optional.empty();
        }
        int upper = Math.min(last, Math.max(first, firstNotUnder(kV)));
        boolean lowerIsNearer = upper > first
                && kV - stations.get(upper - 1).inKilovolts()
                        < stations.get(upper).inKilovolts() - kV - HALFWAY;
        return Optional.of(stations.get(lowerIsNearer ? upper - 1 : upper));
    }

    /** Index of the first station at or over a tube voltage; the number of stations where all lie under it. */
    private int firstNotUnder(double kV) {
        int from = 0;
        int to = kilovolts.length;
        while (from < to) {
            int middle = (from + to) / 2;
            if (kilovolts[middle] < kV) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VoltageStations that && stations.equals(that.stations);
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
