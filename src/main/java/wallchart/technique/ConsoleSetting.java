package wallchart.technique;

import wallchart.chart.ExposureControl;
import wallchart.equipment.FocalSpotName;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** What a person sets on the console: stations of this generator only. */
public sealed interface ConsoleSetting {

    TubeVoltage kV();

    /** The current-time product set, or the back-up of an AEC exposure. */
    CurrentTimeProduct mAs();

    FocalSpotName focalSpot();

    /** Current-time product, tube current and the time they make. */
    record Manual(TubeVoltage kV, CurrentTimeProduct mAs, TubeCurrent mA, ExposureTime time, FocalSpotName focalSpot)
            implements ConsoleSetting {}

    /** The AEC ends the exposure, at the latest at its back-up. */
    record Automatic(TubeVoltage kV, ExposureControl.Automatic control, FocalSpotName focalSpot)
            implements ConsoleSetting {
        @Override
        public CurrentTimeProduct mAs() {
            return control.backup();
        }
    }
}
