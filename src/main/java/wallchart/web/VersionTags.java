package wallchart.web;

import java.util.List;
import wallchart.chart.VersionHead;
import wallchart.equipment.RoomRevision;

/** Entity tags of what never changes: the number of a version and the beginning of its digest. */
final class VersionTags {

    private static final int DIGITS = 24;
    private static final String NONE = "none";

    private VersionTags() {}

    static String of(VersionHead head) {
        return of(head.number(), head.digest());
    }

    static String of(RoomRevision equipment) {
        return of(equipment.number(), equipment.digest());
    }

    private static String of(int number, String digest) {
        var hex = digest.substring(digest.indexOf(':') + 1);
        return number + "-" + hex.substring(0, Math.min(DIGITS, hex.length()));
    }

    static String of(VersionHead from, VersionHead to) {
        return of(from) + "." + of(to);
    }

    /** The list grows with each version, and in no other way. */
    static String of(List<VersionHead> heads) {
        return heads.stream()
                .reduce((one, other) -> one.number() > other.number() ? one : other)
                .map(VersionTags::of)
                .orElse(NONE);
    }
}
