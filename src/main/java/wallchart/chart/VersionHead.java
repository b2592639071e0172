package wallchart.chart;

import java.time.Instant;
import java.time.LocalDate;

/**
 * All of a version but its rows: enough to say which version is in force, who signed it and when it is to be reviewed.
 *
 * @param room id of the room it holds for
 * @param number 1, 2, 3 …; never used again
 * @param digest {@code sha256:} and the hex digest of the canonical content
 * @param title short words for lists
 * @param reason why it was made
 * @param inForceFrom first instant at which it answers
 * @param reviewDue day by which it is to be reviewed
 * @param signature who answers for it
 */
public record VersionHead(
        String room,
        int number,
        String digest,
        String title,
        String reason,
        Instant inForceFrom,
        LocalDate reviewDue,
        Signature signature) {

    public VersionHead {
        room = room.intern(); // the same few ids stand in every version and every look-up
    }
}
