package wallchart.people;

import java.time.Duration;
import java.time.Instant;

/** What came of somebody signing in. */
public sealed interface SignIn {

    /**
     * They are in.
     *
     * @param sessionToken for the cookie; kept nowhere else
     * @param csrfToken to be sent back with every write; kept nowhere else
     * @param person who it is
     * @param expires when the session ends even if it is used all the time
     */
    record SignedIn(String sessionToken, String csrfToken, Person person, Instant expires) implements SignIn {

        /** Without the tokens. */
        @Override
        public String toString() {
            return "signed in as " + person.name() + " until " + expires;
        }
    }

    /** They are not in. An unknown name, a wrong password and a disabled account cannot be told apart. */
    record Refused() implements SignIn {

        /** For people. */
        public String text() {
            return "name or password is not right: try again, or ask your administrator";
        }
    }

    /**
     * Too many wrong passwords for this name from this address; this one was not looked at.
     *
     * @param retryAfter how long to wait, more than zero, in whole seconds
     */
    record Throttled(Duration retryAfter) implements SignIn {}
}
