package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.Finding.Severity;
import wallchart.chart.Row;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ReferenceLevel;

/**
 * What rows cost at the skin beside one of the site's reference levels: rows over it, back-ups over it, and a level that may stand in
 * another unit.
 *
 * <p>A level is the 75th percentile over departments for patients of usual size, so a row for thick patients may well lie over it:
 * the finding says for which thickness it is.
 */
final class LevelFindings {

    /** A row so many times over its level points at the unit of the level: no department is so far off unnoticed. */
    private static final double TOO_FAR_OVER = 10;

    /** A row so many times under its level: levels of old sets are several times over today's practice. */
    private static final double TOO_FAR_UNDER = 20;

    private static final double PERCENT = 100;

    private final ReferenceLevel level;
    private final boolean timesArea;
    private final Function<Row, List<Offer>> offers;

    /** @param offers what would cost a row less */
    LevelFindings(ReferenceLevel level, Function<Row, List<Offer>> offers) {
        this.level = level;
        this.timesArea = level.unit().isTimesArea();
        this.offers = offers;
    }

    /** @param share the estimate over the level */
    private record Cost(Row row, DoseEstimate dose, double share) {
        double thicknessCm() {
            return row.referenceThickness().inCentimetres();
        }
    }

    /** @param middle the row that stands for the examination; absent where none is predicted */
    List<PhysicsFinding> of(List<RowPhysics> rows, Optional<RowPhysics> middle) {
        var found = new ArrayList<PhysicsFinding>();
        var over = over(rows, false);
        if (!over.isEmpty()) {
            found.add(manual(over));
        }
        middle.flatMap(this::cost)
                .filter(LevelFindings::isDoubtful)
                .map(this::doubt)
                .ifPresent(found::add);
        var backups = over(rows, true);
        if (!backups.isEmpty()) {
            found.add(backup(backups));
        }
        return found;
    }

    /** By ascending thickness. */
    private List<Cost> over(List<RowPhysics> rows, boolean upperBound) {
        return rows.stream()
                .map(this::cost)
                .flatMap(Optional::stream)
                .filter(cost -> cost.dose().upperBound() == upperBound)
                .filter(cost -> Figures.shown(cost.share() * value()) > value())
                .sorted(Comparator.comparingDouble(Cost::thicknessCm))
                .toList();
    }

    private Optional<Cost> cost(RowPhysics row) {
        return row.dose().map(dose -> new Cost(row.row(), dose, level.share(dose)));
    }

    private static boolean isDoubtful(Cost cost) {
        return !cost.dose().upperBound() && (cost.share() > TOO_FAR_OVER || cost.share() < 1 / TOO_FAR_UNDER);
    }

    private PhysicsFinding manual(List<Cost> over) {
        var first = over.get(0);
        int uncertainty = first.dose().uncertaintyPercent();
        boolean within = first.share() * (1 - uncertainty / PERCENT) <= 1;
        return finding(
                timesArea ? Kind.OVER_AREA_LEVEL : Kind.OVER_KERMA_LEVEL,
                Severity.CAUTION,
                first,
                "mAs",
                first.row().setting().kV() + " with " + first.dose().forMAs() + " costs about " + estimated(first)
                        + " at " + Figures.plain(first.thicknessCm()) + " cm (" + quantity() + ", within "
                        + uncertainty + " %, output " + first.dose().outputSource()
                        + "), over the site's reference level of " + levelWords()
                        + (within ? ", though not by more than the uncertainty" : "")
                        + Figures.others(over, this::figure)
                        + ": a level is for patients of usual size and no limit for one" + offered(first));
    }

    private String offered(Cost cost) {
        var less = offers.apply(cost.row()).stream().map(Offer::text).toList();
        return less.isEmpty()
                ? ""
                : "; as much at the receptor, for people to weigh and not an order: " + String.join("; ", less);
    }

    private PhysicsFinding backup(List<Cost> over) {
        var first = over.get(0);
        return finding(
                timesArea ? Kind.BACKUP_OVER_AREA_LEVEL : Kind.BACKUP_OVER_KERMA_LEVEL,
                Severity.NOTE,
                first,
                "backupMAs",
                "AEC ends the exposure; at the back-up it would be at most " + estimated(first) + " at "
                        + Figures.plain(first.thicknessCm()) + " cm (" + quantity()
                        + "), the site's reference level is " + levelWords() + Figures.others(over, this::figure)
                        + ": an upper bound for a failing AEC, not what patients get");
    }

    private PhysicsFinding doubt(Cost cost) {
        double share = cost.share();
        return finding(
                timesArea ? Kind.DOUBTFUL_AREA_LEVEL : Kind.DOUBTFUL_KERMA_LEVEL,
                Severity.NOTE,
                cost,
                "",
                "the estimate of " + estimated(cost) + " at " + Figures.plain(cost.thicknessCm()) + " cm ("
                        + quantity() + ") is "
                        + (share > 1 ? Figures.two(share) + " times" : "a " + Figures.two(1 / share) + "th of")
                        + " the site's reference level of " + levelWords()
                        + ": check unit and quantity of the level in the site's settings, then the row");
    }

    /** The estimate in the level's own quantity and unit. */
    private String estimated(Cost cost) {
        return Figures.two(cost.share() * value()) + " " + level.unit().written();
    }

    private double value() {
        return level.value().doubleValue();
    }

    private String quantity() {
        return level.quantity().words();
    }

    private String levelWords() {
        return level.words() + " (" + level.source() + ", " + level.year() + ")";
    }

    private String figure(Cost cost) {
        return estimated(cost) + " in " + cost.row().key().band() + " cm";
    }

    private PhysicsFinding finding(Kind kind, Severity severity, Cost cost, String field, String reason) {
        return new PhysicsFinding(kind, severity, cost.row().key().toString(), field, figure(cost), reason);
    }
}
