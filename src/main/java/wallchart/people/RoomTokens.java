package wallchart.people;

import com.github.benmanes.caffeine.cache.Ticker;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.audit.Ledger;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;

/** The part of {@link People} that knows the rooms' workstations; on the way of every request of a room page. */
final class RoomTokens {

    /** As the ledger names rooms. */
    private static final int LONGEST_ROOM = 32;

    private final Database database;
    private final RoomTokenStore tokens = new RoomTokenStore();
    private final Ledger ledger = new Ledger();
    private final TokensInUse inUse;

    RoomTokens(Database database, Ticker ticker) {
        this.database = database;
        this.inUse = new TokensInUse(ticker, new TokensInUse.Table() {
            @Override
            public TokensInUse.State state() {
                return database.read(tokens::state);
            }

            @Override
            public Map<String, RoomToken> inUse() {
                return database.read(tokens::inUse);
            }
        });
    }

    RoomToken.Issued issue(Actor by, String room, String label) {
        requireLine("room", room, LONGEST_ROOM);
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
        var token = database.<RoomToken>write(by, tx -> {
            var added = tokens.add(tx, room, label, hash);
            ledger.append(tx, AccountEvents.issued(added, hash));
            return added;
        });
        inUse.changed();
        return new RoomToken.Issued(token, secret);
    }

    Optional<RoomToken> revoke(Actor by, long id) {
        inUse.revoke(id); // first: whatever comes of the writing, it was asked for
        var revoked = database.<Optional<RoomToken>>write(by, tx -> {
            boolean now = tokens.revoke(tx, id);
            var token = tokens.find(tx, id);
            token.filter(found -> now).ifPresent(found -> ledger.append(tx, AccountEvents.revoked(found)));
            return token;
        });
        inUse.changed();
        return revoked;
    }

    List<RoomToken> list() {
        return database.read(tokens::list);
    }

    Optional<RoomToken> findById(long id) {
        return database.read(tx -> tokens.find(tx, id));
    }

    Optional<RoomToken> find(String secret) {
        if (secret.length() > Secrets.LONGEST_TOKEN || isRefusedHere(secret)) {
            return Optional.empty();
        }
        return inUse.find(Secrets.hash(secret));
    }

    private static void requireLine(String what, String text, int longest) {
        if (!Lines.isLine(text, longest)) {
            throw new IllegalArgumentException(
                    what + " of a room token must be one line of 1 to " + longest + " characters");
        }
    }

    private boolean isRefusedHere(String secret) {
        return database.mode() != Mode.DEMO && Secrets.isForDemonstration(secret);
    }
}
