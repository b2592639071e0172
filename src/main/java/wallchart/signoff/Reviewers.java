package wallchart.signoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.people.Role;
import wallchart.store.Actor;

/** Who may answer a change: never its author, and only under the role that the answer needs. */
final class Reviewers {

    private Reviewers() {}

    /** Why this person may not; empty where they may. */
    static Optional<Outcome> refusal(Actor by, Change change, List<Role> roles, String verb) {
        var who = by.name() + " (" + by.role() + ")";
        if (roles.stream().noneMatch(role -> Steps.isA(by, role))) {
            return Optional.of(Outcome.notAllowed(who + " may not have a change " + verb + ": ask a "
                    + roles.stream().map(Role::slug).collect(Collectors.joining(" or "))));
        }
        return Steps.isAuthor(by, change)
                ? Optional.of(Outcome.notAllowed(
                        who + " is the author of change " + change.id() + ": somebody else has to look at it"))
                : Optional.empty();
    }
}
