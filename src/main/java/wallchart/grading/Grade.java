package wallchart.grading;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How far one rule of thumb is off, against beam physics, where a row uses it.
 *
 * @param rule which rule
 * @param about what it is applied to: the row's thickness method, the tube voltage reached, or the other grid
 * @param verdict in one word
 * @param errorPercent by how much the rule moves the receptor exposure though it means to keep it, in whole tenths; absent where not predicted
 * @param instead what physics would use in the rule's own unit; absent where not predicted
 * @param unit of {@code instead}
 * @param text the same for people
 */
public record Grade(
        Rule rule,
        String about,
        Verdict verdict,
        OptionalDouble errorPercent,
        OptionalDouble instead,
        String unit,
        String text) {

    /** The rules of thumb that a chart works with. */
    public enum Rule {
        /** The row's thickness method, from its reference thickness to the worse end of its band. */
        THICKNESS,
        /** 15 % more kV for half the mAs: behind kV stations, kV limits and alternatives. */
        FIFTEEN_PERCENT,
        /** The conversion factors of the room's grids. */
        GRID;

        /** The word used in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static Grade notPredicted(Rule rule, String about, String unit, String reason) {
        return new Grade(
                rule,
                about,
                Verdict.NOT_PREDICTED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                unit,
                "not predicted: " + reason);
    }

    /**
     * @param ratio receptor exposure that the rule leads to over the one it means to keep
     * @param tellable relative difference that the model cannot tell from none
     */
    static Grade of(Rule rule, String about, double ratio, double tellable, double instead, String unit, String text) {
        return new Grade(
                rule,
                about,
                Verdict.of(ratio, tellable),
                OptionalDouble.of(Figures.percentMore(ratio)),
                OptionalDouble.of(instead),
                unit,
                text);
    }
}
