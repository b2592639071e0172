package wallchart.grading;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Finding.Severity;
import wallchart.grading.ExaminationPhysics.Reference;

/**
 * Where the rows of an examination together follow the thickness too little or too much, though no edge jumps and no band drifts: many
 * small steps the same way.
 *
 * <p>Beyond three times the limit of a jump, which by the usual limit is a deviation index of 3, where images are repeated (AAPM
 * Report 116, from memory).
 */
final class WholeDrift {

    private static final double JUMPS = 3;

    private final double limit;

    WholeDrift(PhysicsLimits limits) {
        this.limit = JUMPS * limits.maxJumpDb();
    }

    private record Place(RowPhysics row, CurvePoint point) {
        double strays() {
            return Math.abs(point.decibels());
        }
    }

    /** The thickness that strays furthest from the reference, where that is too far. */
    Optional<PhysicsFinding> find(List<RowPhysics> rows, Reference reference) {
        return rows.stream()
                .flatMap(row -> row.curve().stream().map(point -> new Place(row, point)))
                .max(Comparator.comparingDouble(Place::strays))
                .filter(place -> Figures.shown(place.strays()) > limit)
                .map(place -> finding(place, reference));
    }

    private PhysicsFinding finding(Place place, Reference reference) {
        var point = place.point();
        boolean thinGetsMore = point.decibels() > 0 == point.thicknessCm() < reference.thicknessCm();
        return new PhysicsFinding(
                PhysicsFinding.Kind.DRIFT,
                Severity.CAUTION,
                place.row().row().key().toString(),
                "mAs",
                Figures.signedDb(point.decibels()) + " at " + Figures.plain(point.thicknessCm()) + " cm",
                "at " + Figures.plain(point.thicknessCm()) + " cm the receptor exposure is "
                        + Figures.two(place.strays())
                        + " dB " + (point.decibels() > 0 ? "more" : "less") + " than at "
                        + Figures.plain(reference.thicknessCm()) + " cm, more than " + Figures.plain(limit)
                        + " dB, though no edge jumps and no band drifts: the rows together follow the thickness too "
                        + (thinGetsMore ? "little" : "closely"));
    }
}
