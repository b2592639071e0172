package wallchart.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What somebody asks to be published.
 *
 * @param room id of the room
 * @param baseVersion the version it was made from, 0 where the room had none
 * @param content rows and adjustments, whole
 * @param title short words for lists
 * @param reason why it was made
 * @param meaning what the signature states
 * @param inForceFrom first instant at which it answers; absent: from now
 * @param reviewDue day by which it is to be reviewed
 */
public record Draft(
        String room,
        int baseVersion,
        ChartContent content,
        String title,
        String reason,
        String meaning,
        Optional<Instant> inForceFrom,
        LocalDate reviewDue) {}
