package wallchart.equipment;

import java.util.Map;
import wallchart.audit.Act;

/** The event of a room's new equipment: everything its revision says. */
final class RevisionEvent {

    static final String ACTION = "equipment-installed";

    private RevisionEvent() {}

    static Act of(String room, RoomRevision revision) {
        return Act.inRoom(room, ACTION, object(room, revision.number()), "", details(revision));
    }

    static String object(String room, int revision) {
        return room + "/equipment/" + revision;
    }

    static Map<String, Object> details(RoomRevision revision) {
        return Map.of(
                "revision", revision.number(),
                "digest", revision.digest(),
                "inForceFrom", revision.inForceFrom().toString(),
                "installedBy", revision.installedBy());
    }
}
