package wallchart.people;

import java.util.Map;
import wallchart.audit.Act;

/** The events of accounts and room tokens, as the ledger keeps them; never a password, a secret or a hash of one. */
final class AccountEvents {

    private AccountEvents() {}

    static Act added(Person person) {
        var details = Map.of(
                "name", person.name(),
                "printedName", person.printedName(),
                "role", person.role().slug());
        return Act.of("account-added", object(person), "", details);
    }

    static Act disabled(Person person, String reason) {
        return Act.of("account-disabled", object(person), reason, Map.of("name", person.name()));
    }

    static Act enabled(Person person, String reason) {
        return Act.of("account-enabled", object(person), reason, Map.of("name", person.name()));
    }

    static Act roleChanged(Person before, Role after) {
        var details = Map.of("name", before.name(), "from", before.role().slug(), "to", after.slug());
        return Act.of("role-changed", object(before), "", details);
    }

    /** @param own whether the person chose it, and not somebody for them */
    static Act passwordSet(Person person, boolean own) {
        return Act.of("password-set", object(person), "", Map.of("name", person.name(), "own", own));
    }

    static Act issued(RoomToken token) {
        return Act.inRoom(token.room(), "room-token-issued", object(token), "", Map.of("label", token.label()));
    }

    static Act revoked(RoomToken token) {
        return Act.inRoom(token.room(), "room-token-revoked", object(token), "", Map.of("label", token.label()));
    }

    private static String object(Person person) {
        return "person/" + person.id();
    }

    private static String object(RoomToken token) {
        return "room-token/" + token.id();
    }
}
