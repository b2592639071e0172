package wallchart.technique;

import java.util.List;

/**
 * What a change of the room's equipment does to a chart that was signed for the equipment before.
 *
 * @param rows how many rows the chart has
 * @param moved the rows of which something is to be said, in the order of the chart
 */
public record ChartEffects(int rows, List<RowEffect> moved) {

    public ChartEffects {
        moved = List.copyOf(moved);
    }

    /** The rows to look at before the room goes on with its chart. */
    public List<RowEffect> affected() {
        return moved.stream().filter(RowEffect::affected).toList();
    }
}
