package wallchart.people;

import java.time.Instant;
import java.util.Optional;

/**
 * The right of one workstation to read its own room.
 *
 * @param id never given to another token
 * @param room the room's slug
 * @param label which workstation, for people
 * @param issuedAt since when
 * @param issuedBy by whom
 * @param revokedAt since when no longer; empty while it is in use
 */
public record RoomToken(
        long id, String room, String label, Instant issuedAt, String issuedBy, Optional<Instant> revokedAt) {

    /**
     * A token with its secret, shown once.
     *
     * @param token what stays
     * @param secret what the workstation sends; kept nowhere
     */
    public record Issued(RoomToken token, String secret) {

        /** Without the secret. */
        @Override
        public String toString() {
            return token.toString();
        }
    }
}
