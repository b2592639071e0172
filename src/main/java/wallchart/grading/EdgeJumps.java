package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Finding.Severity;

/** Where the receptor exposure jumps from one band to the next: two patients a caliper cannot tell apart, two images. */
final class EdgeJumps {

    /** Beyond this a point is no caliper reading beside the edge, in cm. */
    private static final double NEAR = 0.15;

    private final double limit;

    EdgeJumps(PhysicsLimits limits) {
        this.limit = limits.maxJumpDb();
    }

    /** @param edge thickness at which the lower band ends and the upper begins */
    private record Jump(RowPhysics upper, String edge, CurvePoint before, CurvePoint behind) {
        double decibels() {
            return behind.decibels() - before.decibels();
        }

        String figure() {
            return Figures.signedDb(decibels()) + " at " + edge + " cm";
        }
    }

    /** @param rows by ascending band */
    Optional<PhysicsFinding> find(List<RowPhysics> rows) {
        var jumps = new ArrayList<Jump>();
        for (int i = 1; i < rows.size(); i++) {
            between(rows.get(i - 1), rows.get(i))
                    .filter(jump -> Math.abs(Figures.shown(jump.decibels())) > limit)
                    .ifPresent(jumps::add);
        }
        jumps.sort(Comparator.comparingDouble(jump -> -Math.abs(jump.decibels())));
        return jumps.isEmpty() ? Optional.empty() : Optional.of(finding(jumps));
    }

    /** Empty where a gap or an overlap lies between the bands, or one side is not predicted at the edge. */
    private static Optional<Jump> between(RowPhysics lower, RowPhysics upper) {
        var edge = upper.row().key().band().from();
        if (!edge.equals(lower.row().key().band().to())
                || lower.curve().isEmpty()
                || upper.curve().isEmpty()) {
            return Optional.empty();
        }
        double at = edge.inCentimetres();
        var before = lower.curve().get(lower.curve().size() - 1);
        var first = upper.curve().get(0);
        boolean onEdge = first.thicknessCm() == at && upper.curve().size() > 1;
        var behind = onEdge ? upper.curve().get(1) : first;
        boolean beside = at - before.thicknessCm() < NEAR && behind.thicknessCm() - at < NEAR;
        return beside ? Optional.of(new Jump(upper, Figures.plain(at), before, behind)) : Optional.empty();
    }

    private PhysicsFinding finding(List<Jump> jumps) {
        var worst = jumps.get(0);
        double jump = worst.decibels();
        var text = "between " + Figures.plain(worst.before().thicknessCm()) + " and "
                + Figures.plain(worst.behind().thicknessCm()) + " cm the receptor exposure "
                + (jump < 0 ? "drops " : "rises ") + Figures.two(Math.abs(jump)) + " dB (x "
                + Figures.two(Math.pow(10, jump / 10)) + "), more than " + Figures.plain(limit) + " dB"
                + Figures.others(jumps, Jump::figure)
                + ": bring the two rows together at the edge, or change how they follow the thickness";
        return new PhysicsFinding(
                PhysicsFinding.Kind.JUMP,
                Severity.CAUTION,
                worst.upper().row().key().toString(),
                "bandFromCm",
                worst.figure(),
                text);
    }
}
