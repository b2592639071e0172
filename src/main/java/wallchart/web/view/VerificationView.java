package wallchart.web.view;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Checkpoint;
import wallchart.audit.Verification;

/**
 * Whether the ledger is sound.
 *
 * @param checkedAt when this was found
 * @param stopped why nothing is entered any more; null while the ledger goes on
 * @param events how many there are; null where it is not sound
 * @param head the hash of the last; null where it is not sound
 * @param checkpointsSince the oldest signed statement it was held against; null as for the newest
 * @param checkpoint the newest signed statement it was held against; null where there is none yet, or it is not sound
 * @param notes what fits and still deserves a look
 * @param firstBad the first event that cannot be trusted; null where it is sound
 */
public record VerificationView(
        boolean sound,
        Instant checkedAt,
        String stopped,
        Long events,
        String head,
        FirstCheckpoint checkpointsSince,
        CheckpointView checkpoint,
        List<String> notes,
        FirstBad firstBad) {

    /** Where the doubt begins. */
    public record FirstBad(long seq, String what) {}

    /** From when on statements of the ledger's head are signed. */
    public record FirstCheckpoint(long seq, Instant at) {}

    /** A signed statement of the ledger's head. */
    public record CheckpointView(long seq, String hash, Instant at, String keyId, String signature) {
        static CheckpointView of(Checkpoint checkpoint) {
            return new CheckpointView(
                    checkpoint.seq(), checkpoint.hash(), checkpoint.at(), checkpoint.keyId(), checkpoint.signature());
        }
    }

    public static VerificationView of(Verification verification, Optional<String> stop, Instant checkedAt) {
        var stopped = stop.orElse(null);
        if (verification instanceof Verification.Sound sound) {
            var since = sound.since()
                    .map(first -> new FirstCheckpoint(first.seq(), first.at()))
                    .orElse(null);
            var checkpoint = sound.checkpoint().map(CheckpointView::of).orElse(null);
            return new VerificationView(
                    true, checkedAt, stopped, sound.events(), sound.head(), since, checkpoint, sound.notes(), null);
        }
        var doubtful = (Verification.Doubtful) verification;
        return new VerificationView(
                false,
                checkedAt,
                stopped,
                null,
                null,
                null,
                null,
                List.of(),
                new FirstBad(doubtful.seq(), doubtful.what()));
    }
}
