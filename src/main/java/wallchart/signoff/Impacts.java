package wallchart.signoff;

import wallchart.chart.ChartContent;
import wallchart.equipment.Room;

/** What a change of content does in a room; the same for the same three, always. */
@FunctionalInterface
public interface Impacts {

    /** Compares two contents of a chart as the room would expose with them. */
    Impact of(Room room, ChartContent before, ChartContent after);
}
