package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.Finding.Severity;
import wallchart.chart.Row;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.quantity.Decimals;
import wallchart.technique.ReferenceLevel;

/**
 * Entrance kerma beside the site's reference level: rows over it, back-ups over it, and a level that may stand in another unit.
 *
 * <p>A level is the 75th percentile over departments for patients of usual size, so a row for thick patients may well lie over it:
 * the finding says for which thickness it is.
 */
final class LevelFindings {

    /** A row so many times over its level points at the unit of the level: no department is so far off unnoticed. */
    private static final double TOO_FAR_OVER = 10;

    /** A row so many times under its level: levels of old sets are several times over today's practice, thin patients more. */
    private static final double TOO_FAR_UNDER = 20;

    private static final double PERCENT = 100;

    private final ReferenceLevel level;
    private final Function<Row, List<Offer>> offers;

    /** @param offers what would cost a row less */
    LevelFindings(ReferenceLevel level, Function<Row, List<Offer>> offers) {
        this.level = level;
        this.offers = offers;
    }

    private record Over(RowPhysics row, EntranceKerma kerma, double milliGy) {
        String figure() {
            return Figures.two(milliGy) + " mGy in " + row.row().key().band() + " cm";
        }

        double thicknessCm() {
            return row.row().referenceThickness().inCentimetres();
        }
    }

    /** @param middle the row that stands for the examination; absent where none is predicted */
    List<PhysicsFinding> of(List<RowPhysics> rows, Optional<RowPhysics> middle) {
        var found = new ArrayList<PhysicsFinding>();
        var over = over(rows, false);
        if (!over.isEmpty()) {
            found.add(manual(over));
        }
        middle.flatMap(this::estimate).filter(this::isDoubtful).map(this::doubt).ifPresent(found::add);
        var backups = over(rows, true);
        if (!backups.isEmpty()) {
            found.add(backup(backups));
        }
        return found;
    }

    private List<Over> over(List<RowPhysics> rows, boolean upperBound) {
        return rows.stream()
                .map(this::estimate)
                .flatMap(Optional::stream)
                .filter(over -> over.kerma().upperBound() == upperBound)
                .filter(over -> Figures.shown(over.milliGy()) > milliGy())
                .sorted(Comparator.comparingDouble(Over::thicknessCm))
                .toList();
    }

    private Optional<Over> estimate(RowPhysics row) {
        return row.kerma()
                .map(kerma -> new Over(row, kerma, kerma.in(level.quantity()).inMilligrays()));
    }

    private double milliGy() {
        return level.milliGy().doubleValue();
    }

    private boolean isDoubtful(Over estimate) {
        double times = estimate.milliGy() / milliGy();
        return !estimate.kerma().upperBound() && (times > TOO_FAR_OVER || times < 1 / TOO_FAR_UNDER);
    }

    private PhysicsFinding manual(List<Over> over) {
        var first = over.get(0);
        boolean within = first.milliGy() * (1 - first.kerma().uncertaintyPercent() / PERCENT) <= milliGy();
        return finding(
                Kind.OVER_LEVEL,
                Severity.CAUTION,
                first,
                "mAs",
                setting(first) + " brings about " + Figures.two(first.milliGy()) + " mGy at "
                        + Figures.plain(first.thicknessCm()) + " cm ("
                        + level.quantity().words() + ", within "
                        + first.kerma().uncertaintyPercent() + " %, output "
                        + first.kerma().outputSource()
                        + "), over the site's reference level of " + levelWords()
                        + (within ? ", though not by more than the uncertainty" : "")
                        + Figures.others(over, Over::figure)
                        + ": a level is for patients of usual size and no limit for one" + offered(first));
    }

    private String offered(Over over) {
        var less = offers.apply(over.row().row()).stream().map(Offer::text).toList();
        return less.isEmpty()
                ? ""
                : "; as much at the receptor, for people to weigh and not an order: " + String.join("; ", less);
    }

    private PhysicsFinding backup(List<Over> over) {
        var first = over.get(0);
        return finding(
                Kind.BACKUP_OVER_LEVEL,
                Severity.NOTE,
                first,
                "backupMAs",
                "AEC ends the exposure; at the back-up it would be at most " + Figures.two(first.milliGy()) + " mGy at "
                        + Figures.plain(first.thicknessCm()) + " cm ("
                        + level.quantity().words()
                        + "), the site's reference level is " + levelWords() + Figures.others(over, Over::figure)
                        + ": an upper bound for a failing AEC, not what patients get");
    }

    private PhysicsFinding doubt(Over estimate) {
        double times = estimate.milliGy() / milliGy();
        return finding(
                Kind.DOUBTFUL_LEVEL,
                Severity.NOTE,
                estimate,
                "",
                "the estimate of " + Figures.two(estimate.milliGy()) + " mGy at "
                        + Figures.plain(estimate.thicknessCm())
                        + " cm is "
                        + (times > 1 ? Figures.two(times) + " times" : "1/" + Figures.two(1 / times) + " of")
                        + " the site's reference level of " + levelWords()
                        + ": check the level's unit and quantity in the site's settings, then the row");
    }

    private static String setting(Over over) {
        var setting = over.row().row().setting();
        return setting.kV() + " with " + setting.control().mAs();
    }

    private String levelWords() {
        return Decimals.plain(level.milliGy()) + " mGy (" + level.source() + ", " + level.year() + ")";
    }

    private static PhysicsFinding finding(Kind kind, Severity severity, Over over, String field, String reason) {
        return new PhysicsFinding(kind, severity, over.row().row().key().toString(), field, over.figure(), reason);
    }
}
