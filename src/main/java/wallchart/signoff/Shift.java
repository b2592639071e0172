package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * How far one setting lies from another at receptor and skin, with what is to be said about it. What is not known at one
 * thickness is not known at all.
 *
 * @param exposureDb shift of the receptor exposure, in hundredths of a dB at the finest
 * @param kermaPercent change of the entrance air kerma, in tenths of a percent at the finest
 */
record Shift(OptionalDouble exposureDb, OptionalDouble kermaPercent, List<String> remarks) {

    /** Nothing moves. */
    static final Shift NONE = new Shift(OptionalDouble.of(0), OptionalDouble.of(0), List.of());

    /** Nothing can be said but why. */
    static Shift unknown(String why) {
        return new Shift(OptionalDouble.empty(), OptionalDouble.empty(), List.of(why));
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
                both(exposureDb, other.exposureDb, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a),
                both(kermaPercent, other.kermaPercent, Math::max),
                List.copyOf(said));
    }

    Shift with(String remark) {
        var said = new ArrayList<>(remarks);
        said.add(remark);
        return new Shift(exposureDb, kermaPercent, List.copyOf(said));
    }

    /** Whether a physicist has to look: a limit is passed, or there is nothing to hold against it. */
    boolean needsPhysicist(ReviewLimits limits) {
        return exposureDb.isEmpty()
                || kermaPercent.isEmpty()
                || limits.passedBy(exposureDb.getAsDouble(), kermaPercent.getAsDouble());
    }

    private static OptionalDouble both(OptionalDouble one, OptionalDouble other, DoubleBinaryOperator worse) {
        return one.isEmpty() || other.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(worse.applyAsDouble(one.getAsDouble(), other.getAsDouble()));
    }
}
