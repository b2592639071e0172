package wallchart.equipment;

import java.util.List;
import wallchart.quantity.TubeCurrent;

/**
 * The tube currents a generator can be set to, ascending.
 *
 * @param stations at least one, strictly ascending, over 0 and up to 2000 mA
 */
public record CurrentStations(List<TubeCurrent> stations) {

    private static final TubeCurrent LARGEST_SENSIBLE = TubeCurrent.milliamperes(2000);

    public CurrentStations {
        stations = Ascending.require("mA stations", stations);
        if (stations.get(0).milliamperes().signum() == 0
                || stations.get(stations.size() - 1).compareTo(LARGEST_SENSIBLE) > 0) {
            throw new IllegalArgumentException("mA stations run from " + stations.get(0) + " to "
                    + stations.get(stations.size() - 1) + ": they lie over 0 and up to " + LARGEST_SENSIBLE);
        }
    }
}
