package wallchart.equipment;

import java.util.List;

/** What comes of installing equipment. */
public sealed interface Installation {

    /**
     * The equipment is in force; where the document equals the one in force, that one stays and nothing was written.
     *
     * @param revision the room's revision in force now
     */
    record Installed(RoomRevision revision) implements Installation {}

    /** The document describes no possible room; nothing was written. */
    record Refused(List<EquipmentReading.Problem> problems) implements Installation {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
