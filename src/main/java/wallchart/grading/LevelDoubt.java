package wallchart.grading;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Finding.Severity;
import wallchart.grading.PhysicsFinding.Kind;

/**
 * Whether a reference level may stand in another unit or quantity than its rows cost. The commonest slip is a factor of ten: dGy
 * cm2 for cGy cm2, mGy cm2 for uGy m2.
 *
 * <p>A level is the 75th percentile over departments for patients of usual size. Too low: the row of usual size, nearest the middle of
 * what the examination covers, costs over five times as much, where no department stays unnoticed; rows for thick patients may well. Or over two
 * and a half times, and even the row that costs least, for the thinnest patients, is over the level.
 * Too high: even the row that costs most, for the thickest patients, is under a fifth; a thin patient's row may well be, and beside the
 * sets of old a usual one too. An AEC row gives less than its upper bound, so under a fifth that says the more, and over the level
 * nothing. The factors are judgement of what is plausible; no source.
 */
final class LevelDoubt {

    private static final double TOO_FAR = 5;

    private static final double FAR = 2.5;

    private final double middleCm;

    /** @param middleCm the middle of what the examination covers */
    LevelDoubt(double middleCm) {
        this.middleCm = middleCm;
    }

    /** @param costs of all rows of the examination beside one level */
    Optional<PhysicsFinding> find(List<LevelCost> costs) {
        return usual(costs)
                .filter(cost -> cost.share() > TOO_FAR || cost.share() > FAR && areAllOver(costs))
                .map(cost -> finding(cost, "the estimate of ", Figures.two(cost.share()) + " times"))
                .or(() -> costs.stream()
                        .max(Comparator.comparingDouble(LevelCost::share))
                        .filter(cost -> cost.share() < 1 / TOO_FAR)
                        .map(cost -> finding(cost, most(cost, costs), "1/" + Figures.two(1 / cost.share()) + " of")));
    }

    private static boolean areAllOver(List<LevelCost> costs) {
        return costs.stream().allMatch(cost -> cost.isUpperBound() || cost.isOver());
    }

    private Optional<LevelCost> usual(List<LevelCost> costs) {
        return costs.stream()
                .filter(cost -> !cost.isUpperBound())
                .min(Comparator.comparingDouble(cost -> Math.abs(cost.thicknessCm() - middleCm)));
    }

    private static String most(LevelCost cost, List<LevelCost> costs) {
        if (cost.isUpperBound()) {
            return "even the upper bound at the AEC back-up, ";
        }
        return costs.size() == 1 ? "the estimate of " : "even the largest estimate of all its rows, ";
    }

    private static PhysicsFinding finding(LevelCost cost, String what, String times) {
        return cost.finding(
                cost.isTimesArea() ? Kind.DOUBTFUL_AREA_LEVEL : Kind.DOUBTFUL_KERMA_LEVEL,
                Severity.NOTE,
                "",
                what + cost.estimated() + " at " + Figures.plain(cost.thicknessCm()) + " cm (" + cost.quantity()
                        + "), is " + times + " the site's reference level of " + cost.levelWords()
                        + ": check unit and quantity of the level in the site's settings, then the row");
    }
}
