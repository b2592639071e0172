package wallchart.signoff;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.store.Sha256;

/**
 * What a change does to a room's chart, as it stands before whoever signs.
 *
 * @param rows in the order withdrawn, added, amended
 * @param adjustments in the same order
 * @param limits the limits it was held against
 * @param earlyStarts what it does beside, if it starts before a version that waits for its day; the earliest first
 * @param digest {@code sha256:} and 64 hex digits over everything above in words and decimal strings; a signature names it
 */
public record Impact(
        List<RowImpact> rows,
        List<AdjustmentImpact> adjustments,
        ReviewLimits limits,
        List<EarlyStart> earlyStarts,
        String digest) {

    public Impact {
        earlyStarts = List.copyOf(earlyStarts);
        rows = List.copyOf(rows);
        adjustments = List.copyOf(adjustments);
    }

    /**
     * The same as it is shown and signed: its digest also names the version that the change is applied to, the state of the room's
     * equipment, and what a start before a waiting version does. Where others publish, the tube is measured anew, or such a version
     * comes into force meanwhile, whoever looked before looks again.
     */
    Impact on(int version, String equipmentDigest, List<EarlyStart> early) {
        var brought = early.stream().map(EarlyStart::signed).collect(Collectors.joining());
        return new Impact(
                rows,
                adjustments,
                limits,
                early,
                "sha256:"
                        + Sha256.hex(
                                digest + " on version " + version + " with equipment " + equipmentDigest + brought));
    }

    /** Whether a physicist has to concur before this may be signed to start at once. */
    public boolean needsPhysicist() {
        return needsPhysicist(Instant.MIN);
    }

    /** The same for a start at that instant: what comes into force with it sooner than it was signed for counts too. */
    public boolean needsPhysicist(Instant start) {
        return needsPhysicist(rows, adjustments)
                || earlyStarts.stream()
                        .filter(early -> start.isBefore(early.before()))
                        .anyMatch(EarlyStart::needsPhysicist);
    }

    /** What a start at that instant brings into force sooner than it was signed for; empty where it brings nothing. */
    Optional<EarlyStart> findEarlyStart(Instant start) {
        return earlyStarts.stream()
                .filter(early -> start.isBefore(early.before()))
                .findFirst();
    }

    static boolean needsPhysicist(List<RowImpact> rows, List<AdjustmentImpact> adjustments) {
        return Stream.concat(
                        rows.stream().map(RowImpact::needsPhysicist),
                        adjustments.stream().map(AdjustmentImpact::needsPhysicist))
                .anyMatch(needed -> needed);
    }
}
