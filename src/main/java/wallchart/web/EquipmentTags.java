package wallchart.web;

import wallchart.equipment.RoomRevision;

/** Entity tags of a room's equipment: the number of the revision and the beginning of its digest, which never change. */
final class EquipmentTags {

    private static final int DIGITS = 24;

    private EquipmentTags() {}

    static String of(RoomRevision revision) {
        var hex = revision.digest().substring(revision.digest().indexOf(':') + 1);
        return "equipment-" + revision.number() + "-" + hex.substring(0, DIGITS);
    }

    /** As a header has it. */
    static String header(RoomRevision revision) {
        return "\"" + of(revision) + "\"";
    }
}
