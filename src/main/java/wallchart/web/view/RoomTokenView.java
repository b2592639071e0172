package wallchart.web.view;

import java.time.Instant;
import java.util.List;
import wallchart.people.RoomToken;

/** A workstation's token without its secret; {@code revokedAt} is null while it is in use. */
public record RoomTokenView(long id, String room, String label, Instant issuedAt, String issuedBy, Instant revokedAt) {

    /** All tokens, by room. */
    public record All(List<RoomTokenView> tokens) {
        public static All of(List<RoomToken> tokens) {
            return new All(tokens.stream().map(RoomTokenView::of).toList());
        }
    }

    /** What only the issuing tells: the secret. */
    public record Issued(long id, String room, String label, Instant issuedAt, String issuedBy, String secret) {}

    public static RoomTokenView of(RoomToken token) {
        return new RoomTokenView(
                token.id(),
                token.room(),
                token.label(),
                token.issuedAt(),
                token.issuedBy(),
                token.revokedAt().orElse(null));
    }

    public Issued with(String secret) {
        return new Issued(id, room, label, issuedAt, issuedBy, secret);
    }
}
