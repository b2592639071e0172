package wallchart.equipment;

import java.util.Map;
import java.util.TreeMap;
import wallchart.audit.Act;

/** The event of a room's new equipment: everything its revision says, why it was entered, and what was known about it then. */
final class RevisionEvent {

    static final String ACTION = "equipment-installed";

    private RevisionEvent() {}

    /** @param known beside the revision itself, such as the rows it moves; by other names than {@link #details} has */
    static Act of(String room, RoomRevision revision, String reason, Map<String, ?> known) {
        var all = new TreeMap<String, Object>(known);
        all.putAll(details(revision));
        return Act.inRoom(room, ACTION, object(room, revision.number()), reason, all);
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
