package wallchart.chart;

import java.util.Optional;
import wallchart.equipment.Generator;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;

/** The stations that a row comes to on a console, at its own reference thickness and distance. */
record Stations(Generator generator) {

    static Stations of(Generator generator) {
        return new Stations(generator);
    }

    /** The kV station within the row's window; empty where the window holds none. */
    Optional<TubeVoltage> voltage(RowSetting setting) {
        var stations = generator.kV();
        return stations.nearest(
                setting.kV().inKilovolts(), setting.lowestKilovolts(stations), setting.highestKilovolts(stations));
    }

    /** The mAs station, the row's mAs brought to that kV first; empty for an AEC row. */
    Optional<CurrentTimeProduct> currentTime(RowSetting setting, TubeVoltage kV) {
        return setting.control() instanceof ExposureControl.Manual
                ? Optional.of(generator.mAs().nearest(exact(setting, kV)))
                : Optional.empty();
    }

    /** How far the stations lie from the row at the receptor, in dB. */
    static double deviation(RowSetting setting, TubeVoltage kV, CurrentTimeProduct mAs) {
        return 10 * Math.log10(mAs.inMilliampereSeconds() / exact(setting, kV));
    }

    private static double exact(RowSetting setting, TubeVoltage kV) {
        return setting.control().mAs().inMilliampereSeconds()
                * FifteenPercentRule.currentTimeFactor(setting.kV().inKilovolts(), kV.inKilovolts());
    }
}
