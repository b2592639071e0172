package wallchart.equipment;

import java.util.Optional;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/**
 * The generator of one room: what can be set on its console.
 *
 * @param waveform shape of the tube voltage
 * @param kV tube voltages it offers
 * @param mAs current-time products it offers
 * @param mA tube currents it offers
 * @param shortestTime shortest exposure time, over 0
 * @param automaticExposureControl absent where the generator has none
 */
public record Generator(
        Waveform waveform,
        VoltageStations kV,
        CurrentTimeStations mAs,
        CurrentStations mA,
        ExposureTime shortestTime,
        Optional<AutomaticExposureControl> automaticExposureControl) {

    public Generator {
        if (shortestTime.milliseconds().signum() == 0) {
            throw new IllegalArgumentException("shortest exposure time is 0 ms: it must be over 0");
        }
    }

    /**
     * The largest tube current that makes a current-time product neither in less than the shortest exposure time nor beyond the
     * rating of the focal spot; so the shortest time that does. Empty where none does.
     */
    public Optional<TubeCurrent> largestCurrent(FocalSpot spot, TubeVoltage atKV, CurrentTimeProduct product) {
        var currents = mA.stations();
        for (int i = currents.size() - 1; i >= 0; i--) {
            var time = product.timeAt(currents.get(i));
            if (time.compareTo(shortestTime) >= 0 && spot.bears(atKV, currents.get(i), time)) {
                return Optional.of(currents.get(i));
            }
        }
        return Optional.empty();
    }
}
