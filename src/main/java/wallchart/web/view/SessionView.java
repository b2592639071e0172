package wallchart.web.view;

import java.time.Instant;
import wallchart.people.Person;

/** Who is signed in, until when at the latest. */
public record SessionView(String name, String printedName, String role, Instant expiresAt) {

    /** What only the sign-in tells: the token that every write needs. */
    public record SignedIn(String name, String printedName, String role, Instant expiresAt, String csrfToken) {}

    public static SessionView of(Person person, Instant expires) {
        return new SessionView(
                person.name(), person.printedName(), person.role().slug(), expires);
    }

    public SignedIn with(String csrfToken) {
        return new SignedIn(name, printedName, role, expiresAt, csrfToken);
    }
}
