package wallchart.web.view;

import java.util.List;
import java.util.Optional;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;

/** One room with everything its chart depends on; chart is null where none is in force. */
public record RoomView(
        String room,
        String name,
        ChartHeadView chart,
        GeneratorView generator,
        TubeView tube,
        List<GridView> grids,
        List<ReceptorView> receptors,
        List<SupportView> supports) {

    /** One line of the list of rooms. */
    public record Line(String room, String name, ChartHeadView chart) {
        public static Line of(Room room, Optional<VersionHead> chart) {
            return new Line(room.id(), room.name(), chart.map(ChartHeadView::of).orElse(null));
        }
    }

    /** The list of rooms. */
    public record Lines(List<Line> rooms) {}

    public static RoomView of(Room room, Optional<VersionHead> chart) {
        return new RoomView(
                room.id(),
                room.name(),
                chart.map(ChartHeadView::of).orElse(null),
                GeneratorView.of(room.generator()),
                TubeView.of(room.tube()),
                room.grids().stream().map(GridView::of).toList(),
                room.receptors().stream().map(ReceptorView::of).toList(),
                room.supports().stream().map(SupportView::of).toList());
    }
}
