package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.chart.Row;
import wallchart.equipment.Grid;
import wallchart.equipment.Receptor;
import wallchart.equipment.Room;
import wallchart.equipment.Support;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;

/**
 * A query after every name in it has been found: the row that answers, and what is used with it.
 *
 * @param grid the grid used; absent for none
 * @param rowGrid the grid the row was made for; absent for none
 */
public record Situation(
        Room room,
        Row row,
        Support support,
        Receptor receptor,
        PartThickness thickness,
        Distance sid,
        Optional<Grid> grid,
        Optional<Grid> rowGrid,
        List<Adjustment> adjustments) {

    Situation at(Distance otherSid) {
        return new Situation(room, row, support, receptor, thickness, otherSid, grid, rowGrid, adjustments);
    }

    /** The same with the row's own grid and distance. */
    Situation asInRow() {
        return new Situation(
                room, row, support, receptor, thickness, row.setting().sid(), rowGrid, rowGrid, adjustments);
    }

    /** Thickness over the row's reference, in cm. */
    double centimetresOverReference() {
        return thickness
                .centimetres()
                .subtract(row.referenceThickness().centimetres())
                .doubleValue();
    }

    /** From focal spot to the skin, in cm; may come out 0 or less where the SID leaves no room for the patient. */
    double focusSkinCentimetres() {
        return support.focusSkinCentimetres(sid, thickness).doubleValue();
    }

    String gridName() {
        return name(grid);
    }

    String rowGridName() {
        return name(rowGrid);
    }

    private static String name(Optional<Grid> grid) {
        return grid.map(Grid::id).orElse(Grid.NONE);
    }
}
