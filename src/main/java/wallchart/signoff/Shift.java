package wallchart.signoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import wallchart.quantity.Decimals;
import wallchart.quantity.PartThickness;

/**
 * How far one setting lies from another at receptor and skin, with what is to be said about it. What is not known at one
 * thickness is not known at all.
 *
 * @param exposureDb shift of the receptor exposure, in hundredths of a dB at the finest
 * @param predictedDb the same by the beam model, behind water; absent where the model does not reach
 * @param kermaPercent change of the entrance air kerma, in tenths of a percent at the finest
 */
record Shift(OptionalDouble exposureDb, OptionalDouble predictedDb, OptionalDouble kermaPercent, List<String> remarks) {

    /** 20 % of the exposure; from there the beam model's reference calls a rule of thumb poor. */
    private static final double NOTABLE_DB = 0.8;

    /** Nothing moves. */
    static final Shift NONE = new Shift(OptionalDouble.of(0), OptionalDouble.of(0), OptionalDouble.of(0), List.of());

    /** Nothing can be said but why. */
    static Shift unknown(String why) {
        return new Shift(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(why));
    }

    static OptionalDouble hundredths(double decibels) {
        return OptionalDouble.of(Math.round(decibels * 100) / 100.0);
    }

    static OptionalDouble tenths(double percent) {
        return OptionalDouble.of(Math.round(percent * 10) / 10.0);
    }

    /** The worse of both: the larger shift either way, the larger rise, and the remarks of both. */
    Shift and(Shift other) {
        var said = new ArrayList<>(remarks);
        other.remarks.stream().filter(remark -> !said.contains(remark)).forEach(said::add);
        return new Shift(
                both(exposureDb, other.exposureDb, Shift::farther),
                both(predictedDb, other.predictedDb, Shift::farther),
                both(kermaPercent, other.kermaPercent, Math::max),
                List.copyOf(said));
    }

    Shift with(String remark) {
        var said = new ArrayList<>(remarks);
        said.add(remark);
        return new Shift(exposureDb, predictedDb, kermaPercent, List.copyOf(said));
    }

    /** Says so where the rule of thumb and the beam model differ by more than they are each worth. */
    Shift withDoubts(PartThickness thickness) {
        boolean apart = exposureDb.isPresent()
                && predictedDb.isPresent()
                && Math.abs(exposureDb.getAsDouble() - predictedDb.getAsDouble()) >= NOTABLE_DB;
        return apart
                ? with("the beam model says " + written(predictedDb) + " dB behind " + thickness + ", the 15 % rule "
                        + written(exposureDb) + " dB: what holds is for the physicist to weigh")
                : this;
    }

    private static String written(OptionalDouble decibels) {
        return Decimals.plain(BigDecimal.valueOf(decibels.getAsDouble()));
    }

    /** Whether a physicist has to look: a limit is passed, or there is nothing to hold against it. */
    boolean needsPhysicist(ReviewLimits limits) {
        return exposureDb.isEmpty()
                || kermaPercent.isEmpty()
                || limits.passedBy(exposureDb.getAsDouble(), kermaPercent.getAsDouble())
                || limits.passedBy(predictedDb.orElse(0), kermaPercent.getAsDouble());
    }

    private static double farther(double one, double other) {
        return Math.abs(other) > Math.abs(one) ? other : one;
    }

    private static OptionalDouble both(OptionalDouble one, OptionalDouble other, DoubleBinaryOperator worse) {
        return one.isEmpty() || other.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(worse.applyAsDouble(one.getAsDouble(), other.getAsDouble()));
    }
}
