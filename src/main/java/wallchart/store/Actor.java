package wallchart.store;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Who does something: a person who signed in, a room's workstation, or the program itself.
 *
 * @param personId the account, empty for a workstation and for the program
 * @param name as it is written into the record
 * @param role as it is written into the record: a role's slug, or {@code system}
 * @param requestId of the request that asked for it; empty where none did
 */
public record Actor(OptionalLong personId, String name, String role, Optional<String> requestId) {

    public Actor {
        if (name.isBlank() || role.isBlank()) {
            throw new IllegalArgumentException(
                    "an actor needs a name and a role: got \"" + name + "\", \"" + role + "\"");
        }
    }

    /** A person with an account. */
    public static Actor person(long id, String name, String role) {
        return new Actor(OptionalLong.of(id), name, role, Optional.empty());
    }

    /** The workstation of a room, which has no person behind it. */
    public static Actor workstation(String room) {
        return new Actor(OptionalLong.empty(), "room " + room, "workstation", Optional.empty());
    }

    /** The program itself, for what nobody asked for, such as {@code Actor.system("start")}. */
    public static Actor system(String what) {
        return new Actor(OptionalLong.empty(), what, "system", Optional.empty());
    }

    /** The same, acting in that request. */
    public Actor during(String request) {
        return new Actor(personId, name, role, Optional.of(request));
    }
}
