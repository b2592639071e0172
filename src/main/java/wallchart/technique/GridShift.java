package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.equipment.Grid;
import wallchart.equipment.Room;

/**
 * How the conversion factor of a grid differs between two states of a room's equipment at one tube voltage: by so much the mAs move
 * that are asked with this grid instead of the row's.
 *
 * @param grid its id
 * @param kilovolts a tube voltage at which one of both has the factor tabulated
 * @param before mAs with the grid over mAs without
 * @param after the same of the later state
 */
public record GridShift(String grid, double kilovolts, double before, double after) {

    /** Factors that differ, of every grid that both states have, at every tube voltage at which one of both tabulates it. */
    public static List<GridShift> between(Room before, Room after) {
        var shifts = new ArrayList<GridShift>();
        for (var now : after.grids()) {
            before.findGrid(now.id()).ifPresent(then -> tabulated(then, now).stream()
                    .map(kV -> new GridShift(now.id(), kV, then.factorAt(kV), now.factorAt(kV)))
                    .filter(shift -> shift.before() != shift.after())
                    .forEach(shifts::add));
        }
        return List.copyOf(shifts);
    }

    private static Set<Double> tabulated(Grid then, Grid now) {
        return Stream.of(then, now)
                .flatMap(grid -> grid.factors().stream())
                .map(factor -> factor.kV().inKilovolts())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The later over the earlier. */
    public double ratio() {
        return after / before;
    }
}
