package wallchart.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.util.List;
import java.util.Optional;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;

/** The part of {@link People} that knows the rooms' workstations; on the way of every request of a room page. */
final class RoomTokens {

    private static final int REMEMBERED = 10_000;

    private final Database database;
    private final RoomTokenStore tokens = new RoomTokenStore();
    private final Cache<String, Optional<RoomToken>> remembered;
    private final LastAnswers lastAnswers;

    RoomTokens(Database database, Ticker ticker) {
        this.database = database;
        this.lastAnswers = new LastAnswers(ticker);
        this.remembered = Caffeine.newBuilder()
                .maximumSize(REMEMBERED)
                .expireAfterWrite(People.REMEMBERED_FOR)
                .ticker(ticker)
                .build();
    }

    RoomToken.Issued issue(Actor by, String room, String label) {
        requireLine("room", room, 64);
        requireLine("label", label, 120);
        return issue(by, room, label, Secrets.newToken());
    }

    RoomToken.Issued issueForDemonstration(Actor by, String room) {
        if (database.mode() != Mode.DEMO) {
            throw new IllegalStateException(
                    "a token known to everybody for room \"" + room + "\": only in a demonstration");
        }
        return issue(by, room, "demonstration", Secrets.DEMONSTRATION + room);
    }

    private RoomToken.Issued issue(Actor by, String room, String label, String secret) {
        var hash = Secrets.hash(secret);
        var token = database.<RoomToken>write(by, tx -> tokens.add(tx, room, label, hash));
        remembered.invalidate(hash);
        return new RoomToken.Issued(token, secret);
    }

    Optional<RoomToken> revoke(Actor by, long id) {
        lastAnswers.revoke(id); // first: whatever comes of the writing, it was asked for
        var revoked = database.<Optional<RoomToken>>write(by, tx -> {
            tokens.revoke(tx, id);
            return tokens.find(tx, id);
        });
        remembered.invalidateAll();
        return revoked;
    }

    List<RoomToken> list() {
        return database.read(tokens::list);
    }

    Optional<RoomToken> find(String secret) {
        if (secret.length() > Secrets.LONGEST_TOKEN || isRefusedHere(secret)) {
            return Optional.empty();
        }
        return remembered.get(Secrets.hash(secret), hash -> lastAnswers.orLast(hash, () -> findInUse(hash)));
    }

    private Optional<RoomToken> findInUse(String hash) {
        return database.<Optional<RoomToken>>read(tx -> tokens.findInUse(tx, hash));
    }

    private static void requireLine(String what, String text, int longest) {
        if (text.isBlank() || text.length() > longest || text.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    what + " of a room token must be one line of 1 to " + longest + " characters");
        }
    }

    private boolean isRefusedHere(String secret) {
        return database.mode() != Mode.DEMO && Secrets.isForDemonstration(secret);
    }
}
