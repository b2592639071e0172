package wallchart.chart;

import wallchart.quantity.Decimals;
import wallchart.quantity.TubeVoltage;

/**
 * The tube voltages a row may be moved to, both ends included.
 *
 * @param from not over {@code to}
 */
public record VoltageWindow(TubeVoltage from, TubeVoltage to) {

    public VoltageWindow {
        if (from.compareTo(to) > 0) {
            throw new IllegalArgumentException("kV window from " + from + " to " + to + ": from must not be over to");
        }
    }

    public boolean holds(TubeVoltage kV) {
        return kV.compareTo(from) >= 0 && kV.compareTo(to) <= 0;
    }

    @Override
    public String toString() {
        return Decimals.plain(from.kilovolts()) + " to " + to;
    }
}
