package wallchart.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.Grid;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;

/**
 * Settings that give the receptor of one row as much, at its reference thickness, for at least a fifth less entrance kerma: the least
 * kV station that does, and the support's other grids. Each can be set on the console; each is for people to weigh.
 */
final class Offers {

    /** What is worth a thought. */
    private static final double LEAST_SAVED = 0.20;

    /** How far up the tube voltage is searched where the row has no window of its own. */
    private static final double UPWARDS = 1.30;

    /** Grids are used from 10 to 13 cm upwards; common practice, no source. Above, going without is no offer. */
    private static final double GRIDLESS_UP_TO_CM = 13;

    private final Beams beams;

    Offers(Beams beams) {
        this.beams = beams;
    }

    /** @param row predicted at its reference thickness */
    List<Offer> of(PlacedRow row) {
        var offers = new ArrayList<Offer>();
        findVoltage(row).ifPresent(offers::add);
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
        return offer(row, station, row.setting().grid(), mAsRatio, kermaRatio, "less contrast");
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
        return offer(row, row.setting().kV(), name, ratio, ratio, "more scatter in the image");
    }

    private static boolean isThin(PlacedRow row) {
        return row.reference() <= GRIDLESS_UP_TO_CM;
    }

    private static boolean focuses(Grid grid, PlacedRow row) {
        return grid.focalRange()
                .map(range -> range.contains(row.setting().sid()))
                .orElse(true);
    }

    /** An offer where the saving is beyond what the model might be off by, and the console can do it. */
    private static Optional<Offer> offer(
            PlacedRow row, TubeVoltage kV, String grid, double mAsRatio, double kermaRatio, String costs) {
        if (kermaRatio * (1 + Verdict.TELLABLE) > 1 - LEAST_SAVED) {
            return Optional.empty();
        }
        double mAs = row.setting().control().mAs().inMilliampereSeconds() * mAsRatio;
        double saved = (1 - kermaRatio) * 100;
        return findStation(row, kV, mAs)
                .map(station -> new Offer(kV, station, grid, saved, words(row, kV, station, grid, saved, costs)));
    }

    private static String words(
            PlacedRow row, TubeVoltage kV, CurrentTimeProduct mAs, String grid, double saved, String costs) {
        var other = grid.equals(row.setting().grid()) ? "" : grid.equals(Grid.NONE) ? ", no grid" : ", grid " + grid;
        return kV + " with about " + mAs + other + " (" + Figures.two(saved) + " % less entrance kerma; costs " + costs
                + ")";
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
