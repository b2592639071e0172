package wallchart.signoff;

import java.time.Instant;
import java.util.List;
import wallchart.chart.VersionHead;

/**
 * What a change does to a room if it starts before versions that were signed earlier to start later: their rows come into force with it.
 *
 * @param before the first instant at which a start is not this early any more
 * @param againstVersion the version that answers until then, 0 where none does
 * @param overtaken the versions whose rows come into force sooner than they were signed for, oldest first
 * @param rows everything that differs from what answers until then, those rows among it
 * @param adjustments in the same way
 * @param broughtRows keys of the rows that come from the overtaken versions alone, in the order of {@code rows}
 * @param broughtAdjustments names of such adjustments
 * @param digest over rows, adjustments and limits, as of any impact
 */
public record EarlyStart(
        Instant before,
        int againstVersion,
        List<VersionHead> overtaken,
        List<RowImpact> rows,
        List<AdjustmentImpact> adjustments,
        List<String> broughtRows,
        List<String> broughtAdjustments,
        String digest) {

    public EarlyStart {
        overtaken = List.copyOf(overtaken);
        rows = List.copyOf(rows);
        adjustments = List.copyOf(adjustments);
        broughtRows = List.copyOf(broughtRows);
        broughtAdjustments = List.copyOf(broughtAdjustments);
    }

    /** Whether a physicist has to concur before the change may start this early. */
    public boolean needsPhysicist() {
        return Impact.needsPhysicist(rows, adjustments);
    }

    List<Integer> overtakenNumbers() {
        return overtaken.stream().map(VersionHead::number).toList();
    }

    /** What a signature names of it beside the change's own impact. */
    String signed() {
        return " or before " + before + " on version " + againstVersion + " as " + digest;
    }
}
