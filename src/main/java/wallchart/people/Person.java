package wallchart.people;

import java.time.Instant;
import java.util.Optional;
import wallchart.store.Actor;

/**
 * Somebody with an account.
 *
 * @param id never given to anybody else
 * @param name what they sign in with, lower case
 * @param printedName their name as it stands beside a signature
 * @param role what they may do
 * @param disabledAt since when they may not sign in; empty while they may
 * @param revision counts the changes of the account, from 1
 */
public record Person(long id, String name, String printedName, Role role, Optional<Instant> disabledAt, int revision) {

    public boolean isDisabled() {
        return disabledAt.isPresent();
    }

    /** This person as the one who acts. */
    public Actor asActor() {
        return Actor.person(id, name, role.slug());
    }
}
