package wallchart.web.view;

import java.time.Instant;
import java.time.LocalDate;
import wallchart.chart.VersionHead;

/**
 * Which version an answer comes from.
 *
 * @param source {@code live}: from this process, which keeps the signed versions itself
 */
public record ChartHeadView(
        int version, String digest, Instant inForceFrom, String signedBy, LocalDate reviewDue, String source) {

    public static ChartHeadView of(VersionHead head) {
        return new ChartHeadView(
                head.number(),
                head.digest(),
                head.inForceFrom(),
                head.signature().printedName(),
                head.reviewDue(),
                "live");
    }
}
