package wallchart.web.view;

import java.time.Instant;
import java.time.LocalDate;
import wallchart.chart.VersionHead;

/**
 * Which version an answer comes from, and the signature behind it.
 *
 * @param signedBy printed name of who answers for it
 * @param meaning what the signature states
 * @param source {@code live}: from this process, which keeps the signed versions itself
 */
public record ChartHeadView(
        int version,
        String digest,
        Instant inForceFrom,
        String signedBy,
        Instant signedAt,
        String meaning,
        LocalDate reviewDue,
        String source) {

    public static ChartHeadView of(VersionHead head) {
        return new ChartHeadView(
                head.number(),
                head.digest(),
                head.inForceFrom(),
                head.signature().printedName(),
                head.signature().at(),
                head.signature().meaning(),
                head.reviewDue(),
                "live");
    }
}
