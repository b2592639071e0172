package wallchart.technique;

import java.util.List;
import wallchart.chart.Row;

/**
 * Tube voltage and current-time product while they are worked out; exact, not rounded to anything.
 *
 * @param kV over 0
 * @param mAs over 0
 */
public record Working(double kV, double mAs) {

    /** The row's own setting after those effects. */
    static Working of(Row row, List<Effect> effects) {
        var setting = row.setting();
        var working =
                new Working(setting.kV().inKilovolts(), setting.control().mAs().inMilliampereSeconds());
        for (var effect : effects) {
            working = working.after(effect);
        }
        return working;
    }

    Working after(Effect effect) {
        return new Working(kV + effect.addKilovolts(), mAs * effect.timesCurrentTime());
    }
}
