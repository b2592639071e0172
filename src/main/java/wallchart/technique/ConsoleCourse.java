package wallchart.technique;

import java.util.List;
import wallchart.chart.Row;
import wallchart.quantity.PartThickness;

/**
 * What a room is told along the band of one row, by ascending thickness.
 *
 * @param row the row
 * @param points at the lower end of the band, at every tenth of a centimetre and at the row's reference thickness
 */
public record ConsoleCourse(Row row, List<Point> points) {

    /** What the room is told at one thickness, with the row's own grid and distance and without adjustments. */
    public record Point(PartThickness thickness, Answer answer) {}

    public ConsoleCourse {
        points = List.copyOf(points);
    }
}
