package wallchart.technique;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.Adjustment;
import wallchart.chart.ExposureControl;
import wallchart.chart.VersionHead;
import wallchart.quantity.Decimals;

/** What to watch with one technique, most pressing first, and the standing caution of every answer. */
final class Cautions {

    /**
     * Focus-skin distance below which an answer says so. 45 cm is the least for radiography with fixed equipment in IEC
     * 60601-1-3 as remembered; from memory.
     */
    static final double SHORT_FOCUS_SKIN_CM = 45;

    /** Rounding that an operator would want to hear of: more than one R10 step, which is a deviation index of 1 (IEC 62494-1). */
    private static final double NOTABLE_ROUNDING_DB = 1.0;

    /** Longer exposures than this show movement even in those who can keep still; common practice, no source. */
    private static final double LONG_EXPOSURE_MS = 1000;

    private static final double PERCENT = 100;

    private Cautions() {}

    static List<String> of(
            Situation situation,
            Working wanted,
            ConsoleAttempt.Achieved achieved,
            Optional<DoseEstimate> dose,
            VersionHead chart,
            LocalDate on) {
        var cautions = new ArrayList<String>();
        dose.ifPresent(estimate -> reference(estimate, cautions));
        TogetherAdjusted.caution(situation.adjustments()).ifPresent(cautions::add);
        grid(situation, cautions);
        console(wanted, achieved, cautions);
        adjustments(situation, cautions);
        double focusSkin = situation.focusSkinCentimetres();
        if (focusSkin < SHORT_FOCUS_SKIN_CM) {
            cautions.add("the skin is only " + Words.number(focusSkin)
                    + " cm from the focal spot: a longer SID costs less dose");
        }
        if (on.isAfter(chart.reviewDue())) {
            cautions.add("version " + chart.number() + " was due for review on " + chart.reviewDue()
                    + ": it still answers; tell the lead radiographer");
        }
        cautions.add(StandingCaution.of(situation.room().id()));
        return List.copyOf(cautions);
    }

    /**
     * An estimate that is over the site's reference level by more than its own uncertainty: first of all a sign of a wrong
     * thickness or adjustment. Of an AEC exposure only the upper bound is known, which says nothing of the exposure to come.
     */
    private static void reference(DoseEstimate dose, List<String> cautions) {
        if (dose.upperBound()) {
            return;
        }
        Stream.of(dose.referenceLevel(), dose.areaLevel())
                .flatMap(Optional::stream)
                .filter(level -> level.share(dose) * (1 - dose.uncertaintyPercent() / PERCENT) > 1)
                .forEach(
                        level -> cautions.add(
                                "about " + estimated(level, dose) + " (" + quantity(level, dose)
                                        + "), the site's reference level is " + level.words()
                                        + ": check thickness and adjustments; a level is for the department, not a limit for one patient"));
    }

    private static String quantity(ReferenceLevel level, DoseEstimate dose) {
        return level.quantity().words() + ", within " + dose.uncertaintyPercent() + " %"
                + (level.unit().isTimesArea() ? "; " + DoseEstimate.FIELD : "");
    }

    /** The estimate in the level's own quantity and unit. */
    private static String estimated(ReferenceLevel level, DoseEstimate dose) {
        return Decimals.significant(level.share(dose) * level.value().doubleValue(), 2) + " "
                + level.unit().written();
    }

    private static void grid(Situation situation, List<String> cautions) {
        situation.grid().ifPresent(grid -> grid.focalRange()
                .filter(range -> !range.contains(situation.sid()))
                .ifPresent(range -> cautions.add("SID " + situation.sid() + " is outside the focal range of grid "
                        + grid.id() + ", " + range + ": expect cut-off at the edges")));
    }

    private static void console(Working wanted, ConsoleAttempt.Achieved achieved, List<String> cautions) {
        if (achieved.limited().kV() != wanted.kV()) {
            cautions.add(Words.number(wanted.kV()) + " kV was wanted, "
                    + Words.number(achieved.limited().kV())
                    + " kV is the limit: the mAs makes up for it, contrast and dose differ");
        }
        if (Math.abs(achieved.roundingDeviation()) > NOTABLE_ROUNDING_DB) {
            cautions.add("the nearest mAs station moves the receptor exposure by "
                    + Words.decibels(achieved.roundingDeviation()));
        }
        if (achieved.set() instanceof ConsoleSetting.Manual manual
                && manual.time().inMilliseconds() > LONG_EXPOSURE_MS) {
            cautions.add(
                    "the exposure takes " + manual.time() + ": expect movement; immobilise, or choose a shorter SID");
        }
        if (achieved.set() instanceof ConsoleSetting.Automatic automatic) {
            cautions.add(automaticExposure(automatic.control()));
        }
    }

    /** The AEC sees a cast or a condition by itself; what the chart multiplies is the back-up alone. */
    private static void adjustments(Situation situation, List<String> cautions) {
        if (situation.row().setting().control() instanceof ExposureControl.Automatic) {
            situation.adjustments().stream()
                    .filter(adjustment -> adjustment.effect() instanceof Adjustment.MultiplyCurrentTime)
                    .forEach(adjustment -> cautions.add(adjustment.label()
                            + ": the AEC makes up for it by itself, here it changes the back-up only"));
        }
    }

    private static String automaticExposure(ExposureControl.Automatic control) {
        return "AEC ends the exposure: the part must cover chamber " + control.chamberWords() + "; back-up "
                + Decimals.plain(control.backup().milliampereSeconds()) + " mAs ends it at the latest";
    }
}
