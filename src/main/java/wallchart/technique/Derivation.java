package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ExposureControl;
import wallchart.quantity.Decimals;

/** Puts a finished derivation into words, step by step. */
final class Derivation {

    private static final String KEEPS_EXPOSURE = "the mAs keeps the receptor exposure (15 % rule)";

    private final Situation situation;
    private final List<Step> steps = new ArrayList<>();

    Derivation(Situation situation) {
        this.situation = situation;
    }

    List<Step> steps(
            List<Effect> applied, Working wanted, ConsoleAttempt.Achieved achieved, Optional<DoseEstimate> dose) {
        var setting = situation.row().setting();
        var working =
                new Working(setting.kV().inKilovolts(), setting.control().mAs().inMilliampereSeconds());
        add("row", rowWords(), working);
        for (var effect : applied) {
            working = working.after(effect);
            add(effect.rule(), effect.text(), working);
        }
        console(wanted, achieved);
        var set = achieved.set();
        dose.ifPresent(estimate -> add("dose", doseWords(estimate), settled(set)));
        return List.copyOf(steps);
    }

    private void console(Working wanted, ConsoleAttempt.Achieved achieved) {
        var limited = achieved.limited();
        var set = achieved.set();
        if (limited.kV() != wanted.kV()) {
            add(
                    "kv-limits",
                    Words.number(wanted.kV()) + " kV is outside the limits: " + Words.number(limited.kV()) + " kV; "
                            + KEEPS_EXPOSURE,
                    limited);
        }
        add("kv-station", stationWords(limited, set), new Working(set.kV().inKilovolts(), achieved.kVStationMAs()));
        add(
                "mas-station",
                (set instanceof ConsoleSetting.Automatic
                                ? "nearest mAs station for the back-up, "
                                : "nearest mAs station, ")
                        + Words.decibels(achieved.roundingDeviation()),
                settled(set));
        if (set instanceof ConsoleSetting.Manual manual) {
            add(
                    "current-and-time",
                    manual.mA() + " for " + manual.time() + " on the "
                            + manual.focalSpot().slug() + " focal spot",
                    settled(set));
        }
    }

    private static String stationWords(Working limited, ConsoleSetting set) {
        return limited.kV() == set.kV().inKilovolts()
                ? set.kV() + " is a kV station"
                : Words.number(limited.kV()) + " kV to the nearest kV station, " + set.kV() + "; " + KEEPS_EXPOSURE;
    }

    private void add(String rule, String text, Working after) {
        steps.add(new Step(rule, text, after.kV(), after.mAs()));
    }

    private static Working settled(ConsoleSetting set) {
        return new Working(set.kV().inKilovolts(), set.mAs().inMilliampereSeconds());
    }

    private String rowWords() {
        var setting = situation.row().setting();
        return situation.row().key() + ": " + setting.kV() + ", " + controlWords(setting.control()) + " at "
                + situation.row().referenceThickness() + ", SID " + setting.sid() + ", grid " + setting.grid();
    }

    private static String controlWords(ExposureControl control) {
        return control instanceof ExposureControl.Automatic automatic
                ? "AEC " + automatic.chamberWords() + ", density " + automatic.density() + ", back-up "
                        + automatic.mAs()
                : control.mAs().toString();
    }

    private static String doseWords(DoseEstimate dose) {
        return "output " + dose.outputSource() + ", "
                + Decimals.plain(dose.forMAs().milliampereSeconds()) + " mAs, focus-skin "
                + Words.number(dose.focusSkinCentimetres()) + " cm, backscatter "
                + Words.number(dose.backscatterFactor())
                + "; kerma-area product " + DoseEstimate.FIELD
                + (dose.upperBound() ? "; upper bound at the AEC back-up" : "");
    }
}
