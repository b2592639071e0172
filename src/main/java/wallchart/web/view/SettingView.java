package wallchart.web.view;

import java.math.BigDecimal;
import wallchart.technique.ConsoleSetting;
import wallchart.technique.Technique;

/** What a person sets: stations of this console, and what goes with them; receptor and filter stand in the row. */
public sealed interface SettingView {

    /** A manual exposure. */
    record Manual(
            BigDecimal kV,
            BigDecimal mAs,
            BigDecimal mA,
            BigDecimal timeMs,
            String focalSpot,
            BigDecimal sidCm,
            String grid,
            Double heatUnits)
            implements SettingView {}

    /** An exposure that the AEC ends. */
    record Automatic(BigDecimal kV, AecView aec, String focalSpot, BigDecimal sidCm, String grid, Double heatUnits)
            implements SettingView {}

    static SettingView of(Technique technique) {
        return technique.set() instanceof ConsoleSetting.Manual manual
                ? manual(technique, manual)
                : automatic(technique, (ConsoleSetting.Automatic) technique.set());
    }

    private static Manual manual(Technique technique, ConsoleSetting.Manual set) {
        var used = technique.situation();
        return new Manual(
                set.kV().kilovolts(),
                set.mAs().milliampereSeconds(),
                set.mA().milliamperes(),
                set.time().milliseconds(),
                set.focalSpot().slug(),
                used.sid().centimetres(),
                AskedView.grid(used),
                technique.heatUnits());
    }

    private static Automatic automatic(Technique technique, ConsoleSetting.Automatic set) {
        var used = technique.situation();
        return new Automatic(
                set.kV().kilovolts(),
                AecView.of(set.control()),
                set.focalSpot().slug(),
                used.sid().centimetres(),
                AskedView.grid(used),
                technique.heatUnits());
    }
}
