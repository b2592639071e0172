package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Finding.Severity;

/**
 * Where the receptor exposure drifts inside a band because the row follows the thickness too little or too much.
 *
 * <p>A band in which no thickness strays from the row's own reference by more than the limit of a jump is left out: narrow bands of one
 * technique each are good practice, and what they come to stays within one step of the console.
 */
final class BandSlopes {

    /** A shorter stretch than this is looked at with its surroundings, in cm. */
    private static final double STRETCH = 2;

    private static final double SAME = 1e-6;

    private final PhysicsLimits limits;

    BandSlopes(PhysicsLimits limits) {
        this.limits = limits;
    }

    private record Slope(RowPhysics row, CurvePoint from, CurvePoint to) {
        double decibels() {
            return to.decibels() - from.decibels();
        }

        double perCm() {
            return decibels() / (to.thicknessCm() - from.thicknessCm());
        }

        String figure() {
            return Figures.signed(perCm()) + " dB per cm in " + row.row().key().band() + " cm";
        }
    }

    Optional<PhysicsFinding> find(List<RowPhysics> rows) {
        var slopes = new ArrayList<Slope>();
        rows.forEach(row -> steepest(row).ifPresent(slopes::add));
        slopes.sort(Comparator.comparingDouble(slope -> -Math.abs(slope.perCm())));
        return slopes.isEmpty() ? Optional.empty() : Optional.of(finding(slopes));
    }

    /** The band as a whole where it drifts too much, else its steepest stretch of 2 cm where that does. */
    private Optional<Slope> steepest(RowPhysics row) {
        var curve = row.curve();
        if (curve.size() < 2 || Figures.shown(stray(row)) <= limits.maxJumpDb()) {
            return Optional.empty();
        }
        var whole = new Slope(row, curve.get(0), curve.get(curve.size() - 1));
        return isTooMuch(whole) ? Optional.of(whole) : steepestStretch(row);
    }

    private Optional<Slope> steepestStretch(RowPhysics row) {
        Optional<Slope> found = Optional.empty();
        int to = 0;
        for (var from : row.curve()) {
            while (to < row.curve().size() && row.curve().get(to).thicknessCm() < from.thicknessCm() + STRETCH - SAME) {
                to++;
            }
            if (to == row.curve().size()) {
                return found;
            }
            var slope = new Slope(row, from, row.curve().get(to));
            boolean steeper = found.map(other -> Math.abs(slope.perCm()) > Math.abs(other.perCm()))
                    .orElse(true);
            if (steeper && isTooMuch(slope)) {
                found = Optional.of(slope);
            }
        }
        return found;
    }

    /** How far the band gets from what the row does at its own reference thickness, in dB. */
    private static double stray(RowPhysics row) {
        double reference = row.row().referenceThickness().inCentimetres();
        double there = row.curve().stream()
                .min(Comparator.comparingDouble(point -> Math.abs(point.thicknessCm() - reference)))
                .map(CurvePoint::decibels)
                .orElseThrow();
        return row.curve().stream()
                .mapToDouble(point -> Math.abs(point.decibels() - there))
                .max()
                .orElseThrow();
    }

    private boolean isTooMuch(Slope slope) {
        return Math.abs(Figures.shown(slope.perCm())) > limits.maxSlopeDbPerCm();
    }

    private PhysicsFinding finding(List<Slope> slopes) {
        var worst = slopes.get(0);
        var curve = worst.row().curve();
        var whole = new Slope(worst.row(), curve.get(0), curve.get(curve.size() - 1));
        var text = "from " + Figures.plain(end(worst, worst.from())) + " to " + Figures.plain(end(worst, worst.to()))
                + " cm the receptor exposure " + (worst.perCm() < 0 ? "falls " : "rises ")
                + Figures.two(Math.abs(worst.perCm())) + " dB per cm, " + Figures.two(Math.abs(whole.decibels()))
                + " dB over the band, more than " + Figures.plain(limits.maxSlopeDbPerCm()) + " dB per cm"
                + Figures.others(slopes, Slope::figure) + ": follow the thickness "
                + (worst.perCm() < 0 ? "more" : "less")
                + " closely, or make the bands narrower";
        return new PhysicsFinding(
                PhysicsFinding.Kind.SLOPE,
                Severity.CAUTION,
                worst.row().row().key().toString(),
                "thicknessMethod",
                worst.figure(),
                text);
    }

    /** The last caliper reading of a band is called by the band's end. */
    private static double end(Slope slope, CurvePoint point) {
        var band = slope.row().row().key().band();
        double to = band.to().inCentimetres();
        return to - point.thicknessCm() < 0.11 ? to : point.thicknessCm();
    }
}
