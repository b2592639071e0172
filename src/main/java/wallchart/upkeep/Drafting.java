package wallchart.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import wallchart.audit.Reasons;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentReader;
import wallchart.equipment.EquipmentReading;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.upkeep.EquipmentOutcome.Refused;
import wallchart.upkeep.EquipmentOutcome.UnknownPart;
import wallchart.upkeep.EquipmentOutcome.Unreadable;

/** Works out what a room would be with what somebody enters, or what stands against it. Writes nothing. */
final class Drafting {

    private static final int LEAST_REASON = 10;

    private final Rooms rooms;
    private final MeasurementChecks checks;

    Drafting(Rooms rooms, MeasurementChecks checks) {
        this.rooms = rooms;
        this.checks = checks;
    }

    /** What comes of it. */
    sealed interface Draft {}

    /**
     * It can be entered.
     *
     * @param measured whether it brings a new measurement of the tube's output
     */
    record Sound(EquipmentDocument document, Room room, boolean measured) implements Draft {}

    /** It cannot. */
    record Unsound(Refused why) implements Draft {}

    /** @param reasonNeeded not for trying out */
    Draft draft(RoomRevision base, EquipmentEntry entry, boolean reasonNeeded, LocalDate today) {
        var room = base.room().id();
        var inForce = rooms.findDocument(room, base.number()).orElseThrow();
        if (reasonNeeded && Reasons.visible(entry.reason()) < LEAST_REASON) {
            return unsound(new Unreadable(List.of(
                    new Problem("/reason", "says too little: write at least " + LEAST_REASON + " characters on why"))));
        }
        var edited = entry.edit().applied(inForce);
        return edited.isEmpty()
                ? unsound(unknownPart(entry, inForce))
                : read(base, inForce, edited.get(), entry, today);
    }

    private static UnknownPart unknownPart(EquipmentEntry entry, EquipmentDocument inForce) {
        return new UnknownPart(
                entry.edit().name(), inForce.grids().stream().map(GridPart::id).toList());
    }

    private Draft read(
            RoomRevision base,
            EquipmentDocument inForce,
            EquipmentDocument edited,
            EquipmentEntry entry,
            LocalDate today) {
        var place = entry.edit().place(inForce);
        var reading = EquipmentReader.read(edited);
        if (reading instanceof EquipmentReading.Refused refused) {
            return unsound(new Unreadable(relative(refused.problems(), place)));
        }
        var room = ((EquipmentReading.Accepted) reading).room();
        if (!room.id().equals(base.room().id())) {
            return unsound(new Unreadable(List.of(new Problem(
                    "/room",
                    "is \"" + room.id() + "\", the address names room "
                            + base.room().id() + ": equipment is entered where it stands"))));
        }
        boolean measured = edited.tube().output() != null && !edited.measuresAs(inForce);
        var objection = measured
                ? checks.find(base.room(), room, entry, today)
                : MeasurementChecks.unasked(Set.copyOf(entry.confirmed()));
        return objection.map(why -> unsound(relative(why, place))).orElseGet(() -> new Sound(edited, room, measured));
    }

    private static Draft unsound(Refused why) {
        return new Unsound(why);
    }

    private static Refused relative(Refused why, String place) {
        if (why instanceof Unreadable unreadable) {
            return new Unreadable(relative(unreadable.problems(), place));
        }
        return why instanceof EquipmentOutcome.Questioned questioned
                ? new EquipmentOutcome.Questioned(
                        questioned.questions().stream()
                                .map(asked ->
                                        new EquipmentOutcome.Asked(relative(asked.field(), place), asked.question()))
                                .toList(),
                        questioned.notes(),
                        questioned.fit())
                : why;
    }

    private static List<Problem> relative(List<Problem> problems, String place) {
        return problems.stream()
                .map(problem -> new Problem(relative(problem.field(), place), problem.message()))
                .toList();
    }

    private static String relative(String field, String place) {
        return field.startsWith(place) ? field.substring(place.length()) : field;
    }
}
