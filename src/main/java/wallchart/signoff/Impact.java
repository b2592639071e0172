package wallchart.signoff;

import java.util.List;
import java.util.stream.Stream;
import wallchart.store.Sha256;

/**
 * What a change does to a room's chart, as it stands before whoever signs.
 *
 * @param rows in the order withdrawn, added, amended
 * @param adjustments in the same order
 * @param limits the limits it was held against
 * @param digest {@code sha256:} and 64 hex digits over everything above in words and decimal strings; a signature names it
 */
public record Impact(List<RowImpact> rows, List<AdjustmentImpact> adjustments, ReviewLimits limits, String digest) {

    public Impact {
        rows = List.copyOf(rows);
        adjustments = List.copyOf(adjustments);
    }

    /**
     * The same as it is shown and signed: its digest also names the version that the change is applied to, and the state of the room's
     * equipment. Where others publish, or the tube is measured anew meanwhile, whoever looked before looks again.
     */
    Impact on(int version, String equipmentDigest) {
        return new Impact(
                rows,
                adjustments,
                limits,
                "sha256:" + Sha256.hex(digest + " on version " + version + " with equipment " + equipmentDigest));
    }

    /** Whether a physicist has to concur before this may be signed. */
    public boolean needsPhysicist() {
        return Stream.concat(
                        rows.stream().map(RowImpact::needsPhysicist),
                        adjustments.stream().map(AdjustmentImpact::needsPhysicist))
                .anyMatch(needed -> needed);
    }
}
