package wallchart.people;

import java.util.Map;
import wallchart.audit.Act;
import wallchart.store.Sha256;

/**
 * The events of accounts and room tokens, as the ledger keeps them: never a password, a secret or a hash of one. Of the stored hash
 * they have a digest, which opens nothing and shows when another hash was put in its place.
 */
final class AccountEvents {

    static final String ADDED = "account-added";
    static final String DISABLED = "account-disabled";
    static final String ENABLED = "account-enabled";
    static final String ROLE_CHANGED = "role-changed";
    static final String PASSWORD_SET = "password-set";
    static final String ISSUED = "room-token-issued";
    static final String REVOKED = "room-token-revoked";

    /** Name of the detail that is {@link #digestOf} the stored hash. */
    static final String HASH_DIGEST = "hashDigest";

    private AccountEvents() {}

    /** @param hash as it is stored, of a password or of a token's secret */
    static String digestOf(String hash) {
        return "sha256:" + Sha256.hex(hash);
    }

    static Act added(Person person, String passwordHash) {
        var details = Map.of(
                "name",
                person.name(),
                "printedName",
                person.printedName(),
                "role",
                person.role().slug(),
                HASH_DIGEST,
                digestOf(passwordHash));
        return Act.of(ADDED, object(person.id()), "", details);
    }

    static Act disabled(Person person, String reason) {
        return Act.of(DISABLED, object(person.id()), reason, Map.of("name", person.name()));
    }

    static Act enabled(Person person, String reason) {
        return Act.of(ENABLED, object(person.id()), reason, Map.of("name", person.name()));
    }

    static Act roleChanged(Person before, Role after) {
        var details = Map.of("name", before.name(), "from", before.role().slug(), "to", after.slug());
        return Act.of(ROLE_CHANGED, object(before.id()), "", details);
    }

    /** @param own whether the person chose it, and not somebody for them */
    static Act passwordSet(Person person, boolean own, String passwordHash) {
        var details = Map.of("name", person.name(), "own", own, HASH_DIGEST, digestOf(passwordHash));
        return Act.of(PASSWORD_SET, object(person.id()), "", details);
    }

    static Act issued(RoomToken token, String tokenHash) {
        var details = Map.of("label", token.label(), HASH_DIGEST, digestOf(tokenHash));
        return Act.inRoom(token.room(), ISSUED, tokenObject(token.id()), "", details);
    }

    static Act revoked(RoomToken token) {
        return Act.inRoom(token.room(), REVOKED, tokenObject(token.id()), "", Map.of("label", token.label()));
    }

    static String object(long personId) {
        return "person/" + personId;
    }

    static String tokenObject(long tokenId) {
        return "room-token/" + tokenId;
    }
}
