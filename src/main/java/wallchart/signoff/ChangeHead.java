package wallchart.signoff;

import java.time.Instant;
import java.util.Optional;

/**
 * What holds for a change in every state.
 *
 * @param id never used again
 * @param room id of the room
 * @param title short words for lists
 * @param reason why it is proposed
 * @param baseVersion the version its author works on, 0 where the room has none
 * @param kind which way it takes
 * @param revertsTo the version it brings back; present for a revert only
 * @param author who proposes it
 * @param openedAt when it was opened
 * @param revision counts every edit and every step, from 1
 */
public record ChangeHead(
        long id,
        String room,
        String title,
        String reason,
        int baseVersion,
        ChangeKind kind,
        Optional<Integer> revertsTo,
        Signatory author,
        Instant openedAt,
        int revision) {

    ChangeHead next() {
        return next(baseVersion);
    }

    ChangeHead next(String newTitle, String newReason) {
        return new ChangeHead(
                id, room, newTitle, newReason, baseVersion, kind, revertsTo, author, openedAt, revision + 1);
    }

    ChangeHead next(int base) {
        return new ChangeHead(id, room, title, reason, base, kind, revertsTo, author, openedAt, revision + 1);
    }
}
