package wallchart.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.RoomRevision;
import wallchart.physics.TubeQuestion;

/** What comes of entering equipment, or of trying out what entering it would do. */
public sealed interface EquipmentOutcome {

    /**
     * It is in force; where it says what was in force, that stays and nothing was written.
     *
     * @param before the revision it was worked out from
     * @param after the revision in force now
     */
    record Entered(RoomRevision before, RoomRevision after, EffectsReport effects) implements EquipmentOutcome {}

    /** It could be entered; nothing was written. */
    record Possible(RoomRevision before, EffectsReport effects) implements EquipmentOutcome {}

    /** It is not entered; nothing was written. */
    sealed interface Refused extends EquipmentOutcome {}

    /** It describes no possible room, or cannot be as it is said; each problem with its place in the part that was entered. */
    record Unreadable(List<Problem> problems) implements Refused {
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }

    /** Somebody entered something since. */
    record Stale(RoomRevision newest) implements Refused {}

    /** The room has no such part. */
    record UnknownPart(String part, List<String> known) implements Refused {
        public UnknownPart {
            known = List.copyOf(known);
        }
    }

    /** The measurement is older than the one in force, and nobody said that it is to replace it. */
    record OlderMeasurement(LocalDate entered, LocalDate inForce) implements Refused {}

    /**
     * Something measured looks like a slip; whoever measured it measures again, or confirms exactly these.
     *
     * @param notes what else is to be said of the measurement
     * @param fit of what was measured, to see what is off; absent where the tube is uncalibrated
     */
    record Questioned(List<Asked> questions, List<String> notes, Optional<FittedTube> fit) implements Refused {
        public Questioned {
            questions = List.copyOf(questions);
            notes = List.copyOf(notes);
        }
    }

    /** @param field JSON Pointer into the part that was entered */
    record Asked(String field, TubeQuestion question) {}
}
