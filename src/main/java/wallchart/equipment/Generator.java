package wallchart.equipment;

import java.util.Optional;
import wallchart.quantity.ExposureTime;

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
}
