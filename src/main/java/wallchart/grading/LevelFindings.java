package wallchart.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wallchart.chart.Finding.Severity;
import wallchart.chart.Row;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.technique.ReferenceLevel;

/**
 * What rows cost at the skin beside one of the site's reference levels: rows over it, back-ups over it, and a level that may stand in
 * another unit.
 *
 * <p>A level is the 75th percentile over departments for patients of usual size, so a row for thick patients may well lie over it:
 * the finding says for which thickness it is.
 */
final class LevelFindings {

    private static final double PERCENT = 100;

    private final LevelDoubt doubt;
    private final Function<Row, List<Offer>> offers;

    /**
     * @param middleCm the middle of what the examination covers
     * @param offers what would cost a row less
     */
    LevelFindings(double middleCm, Function<Row, List<Offer>> offers) {
        this.doubt = new LevelDoubt(middleCm);
        this.offers = offers;
    }

    List<PhysicsFinding> of(ReferenceLevel level, List<RowPhysics> rows) {
        var costs = LevelCost.of(level, rows);
        var found = new ArrayList<PhysicsFinding>();
        var over = over(costs, false);
        if (!over.isEmpty()) {
            found.add(manual(over));
        }
        doubt.find(costs).ifPresent(found::add);
        var backups = over(costs, true);
        if (!backups.isEmpty()) {
            found.add(backup(backups));
        }
        return found;
    }

    private static List<LevelCost> over(List<LevelCost> costs, boolean upperBound) {
        return costs.stream()
                .filter(cost -> cost.isUpperBound() == upperBound && cost.isOver())
                .toList();
    }

    private PhysicsFinding manual(List<LevelCost> over) {
        var first = over.get(0);
        int uncertainty = first.dose().uncertaintyPercent();
        boolean within = first.share() * (1 - uncertainty / PERCENT) <= 1;
        return first.finding(
                first.isTimesArea() ? Kind.OVER_AREA_LEVEL : Kind.OVER_KERMA_LEVEL,
                Severity.CAUTION,
                "mAs",
                first.row().setting().kV() + " with " + first.dose().forMAs() + " costs about " + first.estimated()
                        + " at " + Figures.plain(first.thicknessCm()) + " cm (" + first.quantity() + ", within "
                        + uncertainty + " %, output " + first.dose().outputSource()
                        + "), over the site's reference level of " + first.levelWords()
                        + (within ? ", though not by more than the uncertainty" : "")
                        + Figures.others(over, LevelCost::figure)
                        + ": a level is for patients of usual size and no limit for one" + offered(first));
    }

    private String offered(LevelCost cost) {
        var less = offers.apply(cost.row()).stream().map(Offer::text).toList();
        return less.isEmpty()
                ? ""
                : "; as much at the receptor, for people to weigh and not an order: " + String.join("; ", less);
    }

    private static PhysicsFinding backup(List<LevelCost> over) {
        var first = over.get(0);
        return first.finding(
                first.isTimesArea() ? Kind.BACKUP_OVER_AREA_LEVEL : Kind.BACKUP_OVER_KERMA_LEVEL,
                Severity.NOTE,
                "backupMAs",
                "AEC ends the exposure; at the back-up it would be at most " + first.estimated() + " at "
                        + Figures.plain(first.thicknessCm()) + " cm (" + first.quantity()
                        + "), the site's reference level is " + first.levelWords()
                        + Figures.others(over, LevelCost::figure)
                        + ": an upper bound for a failing AEC, not what patients get");
    }
}
