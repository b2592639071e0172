package wallchart.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.equipment.Grid;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ReferenceLevel;

/**
 * Settings that give the receptor of one row as much, at its reference thickness, for at least a fifth less entrance kerma: the least
 * kV station that does, and the support's other grids. Each can be set on the console; each is for people to weigh.
 *
 * <p>A quarter less for a tenth more kV can be had almost anywhere: it is worth a word only where the row costs over half of a reference
 * level of the site. Beside no level only another grid is, where it saves over a third. Both are choices of this program; no source.
 */
final class Offers {

    /** What is worth a thought. */
    private static final double LEAST_SAVED = 0.20;

    /** The same where the site has no level for the examination. */
    private static final double LEAST_SAVED_WITHOUT_LEVEL = 0.35;

    /** A row under this share of every level of the site costs little enough. */
    private static final double WORTH_A_THOUGHT = 0.5;

    private static final double PERCENT = 100;

    private static final String LEFT_OUT = "effective dose falls less than that; noise and contrast were not predicted";

    /** How far up the tube voltage is searched where the row has no window of its own. */
    private static final double UPWARDS = 1.30;

    /** Grids are used from 10 to 13 cm upwards; common practice, no source. Above, going without is no offer. */
    private static final double GRIDLESS_UP_TO_CM = 13;

    private final Beams beams;
    private final List<ReferenceLevel> levels;
    private final DoseEstimate dose;

    /** @param dose what the row costs as it is written, with the site's levels beside it */
    Offers(Beams beams, DoseEstimate dose) {
        this.beams = beams;
        this.dose = dose;
        this.levels = Stream.of(dose.referenceLevel(), dose.areaLevel())
                .flatMap(Optional::stream)
                .toList();
    }

    /** @param row predicted at its reference thickness */
    List<Offer> of(PlacedRow row) {
        boolean isWorthAThought =
                levels.isEmpty() || levels.stream().anyMatch(level -> level.share(dose) > WORTH_A_THOUGHT);
        return isWorthAThought ? all(row) : List.of();
    }

    private List<Offer> all(PlacedRow row) {
        var offers = new ArrayList<Offer>();
        if (!levels.isEmpty()) {
            findVoltage(row).ifPresent(offers::add);
        }
        row.how().support().grids().stream()
                .filter(grid -> !grid.equals(row.setting().grid()))
                .map(grid -> findGrid(row, grid))
                .flatMap(Optional::stream)
                .forEach(offers::add);
        return offers;
    }

    private Optional<Offer> findVoltage(PlacedRow row) {
        double highest = highest(row);
        for (var station : row.how().room().generator().kV().stations()) {
            double kV = station.inKilovolts();
            if (kV > row.kV() && kV <= highest) {
                var offer = at(row, station);
                if (offer.isPresent()) {
                    return offer;
                }
            }
        }
        return Optional.empty();
    }

    private static double highest(PlacedRow row) {
        double allowed =
                row.setting().highestKilovolts(row.how().room().generator().kV());
        return row.setting().kVWindow().isPresent() ? allowed : Math.min(allowed, row.kV() * UPWARDS);
    }

    private Optional<Offer> at(PlacedRow row, TubeVoltage station) {
        double kV = station.inKilovolts();
        double thickness = row.reference();
        if (row.beam().findObjection(kV, thickness).isPresent()) {
            return Optional.empty();
        }
        double mAsRatio =
                row.beam().signalPerMAs(row.kV(), thickness) / row.beam().signalPerMAs(kV, thickness);
        double kermaRatio = mAsRatio
                * beams.model().entrancePerMAs(row.how(), kV, thickness)
                / beams.model().entrancePerMAs(row.how(), row.kV(), thickness);
        boolean worth = isWorth(kermaRatio, row.tellable(row.kV()));
        return worth
                ? offer(row, station, row.setting().grid(), mAsRatio, kermaRatio, "less contrast")
                : Optional.empty();
    }

    private Optional<Offer> findGrid(PlacedRow row, String name) {
        var grid = row.how().room().findGrid(name);
        boolean fits = grid.isPresent() ? focuses(grid.get(), row) : name.equals(Grid.NONE) && isThin(row);
        if (!fits) {
            return Optional.empty();
        }
        var other = beams.of(row.how().with(grid), row.beam().response());
        double ratio =
                row.beam().signalPerMAs(row.kV(), row.reference()) / other.signalPerMAs(row.kV(), row.reference());
        return isWorth(ratio, row.tellable())
                ? offer(row, row.setting().kV(), name, ratio, ratio, "more scatter in the image")
                : Optional.empty();
    }

    private static boolean isThin(PlacedRow row) {
        return row.reference() <= GRIDLESS_UP_TO_CM;
    }

    private static boolean focuses(Grid grid, PlacedRow row) {
        return grid.focalRange()
                .map(range -> range.contains(row.setting().sid()))
                .orElse(true);
    }

    /** An offer where the console can do it. */
    private static Optional<Offer> offer(
            PlacedRow row, TubeVoltage kV, String grid, double mAsRatio, double kermaRatio, String costs) {
        double mAs = row.setting().control().mAs().inMilliampereSeconds() * mAsRatio;
        double saved = (1 - kermaRatio) * PERCENT;
        return findStation(row, kV, mAs)
                .map(station -> new Offer(kV, station, grid, saved, words(row, kV, station, grid, saved, costs)));
    }

    /** Also where the model is off by all that it cannot tell. */
    private boolean isWorth(double kermaRatio, double tellable) {
        double least = levels.isEmpty() ? LEAST_SAVED_WITHOUT_LEVEL : LEAST_SAVED;
        return kermaRatio * (1 + tellable) <= 1 - least;
    }

    private static String words(
            PlacedRow row, TubeVoltage kV, CurrentTimeProduct mAs, String grid, double saved, String costs) {
        var other = grid.equals(row.setting().grid()) ? "" : grid.equals(Grid.NONE) ? ", no grid" : ", grid " + grid;
        return "row of " + row.row().key().band() + " cm, at " + Figures.plain(row.reference()) + " cm: " + kV
                + " with about " + mAs + other + " (" + Figures.two(saved) + " % less entrance kerma, " + LEFT_OUT
                + "; costs "
                + costs + ")";
    }

    /** The mAs station, where the focal spot bears it and the row's longest time allows it. */
    private static Optional<CurrentTimeProduct> findStation(PlacedRow row, TubeVoltage kV, double mAs) {
        var room = row.how().room();
        var stations = room.generator().mAs();
        if (stations.isAbove(mAs) || stations.isBelow(mAs)) {
            return Optional.empty();
        }
        var station = stations.nearest(mAs);
        return room.tube()
                .find(row.setting().focalSpot())
                .flatMap(spot -> room.generator().largestCurrent(spot, kV, station))
                .filter(current -> row.setting()
                        .longestTime()
                        .map(longest -> station.timeAt(current).compareTo(longest) <= 0)
                        .orElse(true))
                .map(current -> station);
    }
}
