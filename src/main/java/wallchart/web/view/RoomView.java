package wallchart.web.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wallchart.chart.VersionHead;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.upkeep.OutputDue;

/** One room with everything its chart depends on; chart is null where none is in force, equipment says which state this is. */
public record RoomView(
        String room,
        String name,
        ChartHeadView chart,
        EquipmentHeadView equipment,
        GeneratorView generator,
        TubeView tube,
        List<GridView> grids,
        List<ReceptorView> receptors,
        List<SupportView> supports) {

    /**
     * One line of the list of rooms.
     *
     * @param reviewOverdue whether the day has passed on which the chart in force was to be reviewed
     * @param outputMeasuredOn day of the tube's last measurement; null where nobody measured it
     * @param outputDue day by which it is to be measured again; null where nobody measured it
     * @param outputOverdue whether that day has passed, or nobody measured the tube
     */
    public record Line(
            String room,
            String name,
            ChartHeadView chart,
            boolean reviewOverdue,
            LocalDate outputMeasuredOn,
            LocalDate outputDue,
            boolean outputOverdue) {
        public static Line of(Room room, Optional<VersionHead> chart, OutputDue due, LocalDate today) {
            return new Line(
                    room.id(),
                    room.name(),
                    chart.map(ChartHeadView::of).orElse(null),
                    chart.filter(head -> today.isAfter(head.reviewDue())).isPresent(),
                    room.tube().output().map(MeasuredOutput::measuredOn).orElse(null),
                    due.day(room).orElse(null),
                    due.isOverdue(room, today));
        }
    }

    /** The list of rooms. */
    public record Lines(List<Line> rooms) {}

    public static RoomView of(RoomRevision revision, Optional<VersionHead> chart) {
        var room = revision.room();
        return new RoomView(
                room.id(),
                room.name(),
                chart.map(ChartHeadView::of).orElse(null),
                EquipmentHeadView.of(revision),
                GeneratorView.of(room.generator()),
                TubeView.of(room.tube()),
                room.grids().stream().map(GridView::of).toList(),
                room.receptors().stream().map(ReceptorView::of).toList(),
                room.supports().stream().map(SupportView::of).toList());
    }
}
