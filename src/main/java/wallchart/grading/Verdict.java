package wallchart.grading;

import java.util.Locale;

/** What beam physics says of a rule of thumb in one place. */
public enum Verdict {
    /** Off by less than the model can tell: its own scatter, bone and outline are larger, so physics finds no fault with the rule. */
    CANNOT_TELL,
    /** Off by less than 10 %. */
    GOOD,
    /** Off by less than 20 %, still under an R10 step of the mAs. */
    USABLE,
    /** Off by 20 % or more. */
    POOR,
    /** Outside the beam model. */
    NOT_PREDICTED;

    private static final double GOOD_WITHIN = 0.10;
    private static final double USABLE_WITHIN = 0.20;

    /**
     * @param ratio of what the rule leads to over what it means
     * @param tellable relative difference that the model cannot tell from none
     */
    static Verdict of(double ratio, double tellable) {
        double off = Math.abs(ratio - 1);
        if (off < tellable) {
            return CANNOT_TELL;
        }
        if (off < GOOD_WITHIN) {
            return GOOD;
        }
        return off < USABLE_WITHIN ? USABLE : POOR;
    }

    /** The word used in answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
