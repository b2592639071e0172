package wallchart.physics;

import java.util.Optional;
import wallchart.quantity.Decimals;
import wallchart.quantity.TubeVoltage;

/**
 * One measured output beside the fit of its tube.
 *
 * @param measuredMicroGyPerMAs at one metre
 * @param fittedMicroGyPerMAs what the fit through all points says there
 * @param residualPercent measured over that fit, less 1
 * @param deviationPercent measured over the fit through the <em>other</em> points, less 1: of three points, an end that is 20 % off
 *     bends the fit towards itself and leaves a residual of a few percent only
 * @param standing what the others say of it
 */
public record CalibratedPoint(
        TubeVoltage kV,
        double measuredMicroGyPerMAs,
        double fittedMicroGyPerMAs,
        double residualPercent,
        double deviationPercent,
        Standing standing) {

    /** What the other points say of one. */
    public enum Standing {
        /** It goes with the others, or is not asked for because another point explains what is off. */
        SOUND,
        /** It stands far from the others, and so may be wrong. */
        QUESTIONED,
        /** It alone is wrong: without it, the others fit. */
        ODD_ONE_OUT
    }

    /**
     * Percent beyond which a point is questioned: twice the 5 % that a calibrated model keeps, so a sound point does not reach it.
     * Common practice, no source.
     */
    public static final double QUESTIONED_ABOVE_PERCENT = 10;

    /** Whether the point should be measured again or confirmed. */
    public boolean questioned() {
        return standing != Standing.SOUND;
    }

    /** Whether it stands farther from one of the fits than sound points do. */
    boolean isFar() {
        return Math.abs(residualPercent) > QUESTIONED_ABOVE_PERCENT
                || Math.abs(deviationPercent) > QUESTIONED_ABOVE_PERCENT;
    }

    CalibratedPoint standing(Standing other) {
        return new CalibratedPoint(
                kV, measuredMicroGyPerMAs, fittedMicroGyPerMAs, residualPercent, deviationPercent, other);
    }

    /** What is asked about the point, for whoever measured it. */
    public TubeQuestion question() {
        var value = Decimals.significant(measuredMicroGyPerMAs, 4) + " uGy/mAs";
        return new TubeQuestion(
                TubeQuestion.OUTPUT_AT + Decimals.plain(kV.kilovolts()),
                TubeQuestion.Subject.OUTPUT,
                Optional.of(kV),
                value,
                kV + ": " + value + " is " + Math.round(Math.abs(deviationPercent)) + " % "
                        + (deviationPercent < 0 ? "under" : "over") + " the fit of the others"
                        + (standing == Standing.ODD_ONE_OUT ? ", which fit within 10 % without it" : ""),
                "measure again");
    }
}
