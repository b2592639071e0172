package wallchart.web.view;

import java.time.Instant;
import wallchart.people.Person;

/** Who is signed in, until when at the latest; {@code personId} is what a change names its author by. */
public record SessionView(long personId, String name, String printedName, String role, Instant expiresAt) {

    /** What only the sign-in tells: the token that every write needs. */
    public record SignedIn(
            long personId, String name, String printedName, String role, Instant expiresAt, String csrfToken) {}

    public static SessionView of(Person person, Instant expires) {
        return new SessionView(
                person.id(), person.name(), person.printedName(), person.role().slug(), expires);
    }

    public SignedIn with(String csrfToken) {
        return new SignedIn(personId, name, printedName, role, expiresAt, csrfToken);
    }
}
