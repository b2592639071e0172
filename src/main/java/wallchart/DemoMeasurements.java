package wallchart;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import wallchart.DepartmentDocument.MeasurementPart;
import wallchart.Refusals.Refused;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentEdit;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.people.Person;
import wallchart.upkeep.EquipmentDesk;
import wallchart.upkeep.EquipmentEntry;
import wallchart.upkeep.EquipmentOutcome.Entered;

/** What the demo's medical physicist is said to have measured of its tubes. */
final class DemoMeasurements {

    private final EquipmentDesk desk;
    private final Rooms rooms;
    private final List<MeasurementPart> parts;

    DemoMeasurements(EquipmentDesk desk, Rooms rooms, List<MeasurementPart> parts) {
        this.desk = desk;
        this.rooms = rooms;
        this.parts = parts;
    }

    List<MeasurementPart> parts() {
        return parts;
    }

    void enter(MeasurementPart part, Clock then, Person physicist) {
        var revisions = rooms.revisions(part.room());
        var newest = revisions.get(revisions.size() - 1);
        var outcome = desk.at(then).enter(physicist.asActor(), part.room(), newest.number(), entry(part, then, newest));
        if (!(outcome instanceof Entered)) {
            throw new Refused("measurement of room " + part.room() + ": " + outcome);
        }
    }

    /** Measured the day before; the files' own day may be later, where the demo runs on a machine whose clock is behind. */
    private static EquipmentEntry entry(MeasurementPart part, Clock then, RoomRevision newest) {
        var day = LocalDate.ofInstant(then.instant(), ZoneOffset.UTC).minusDays(1);
        var written = part.output();
        var output = new OutputPart(
                day,
                written.totalFiltrationMmAl(),
                written.totalFiltrationMmCu(),
                written.hvlMmAl(),
                written.hvlAtKV(),
                written.uncertaintyPercent(),
                written.microGyPerMAsAtOneMetre());
        Optional<LocalDate> newer =
                newest.room().tube().output().map(MeasuredOutput::measuredOn).filter(day::isBefore);
        return new EquipmentEntry(new EquipmentEdit.Output(output), part.reason(), List.of(), newer);
    }
}
