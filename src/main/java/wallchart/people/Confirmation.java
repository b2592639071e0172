package wallchart.people;

import java.time.Duration;

/** What came of somebody giving their password again, as before a signature. */
public sealed interface Confirmation {

    /** It is theirs, and their account is in use. */
    record Confirmed(Person person) implements Confirmation {}

    /** It is not, or the account is disabled. */
    record Refused() implements Confirmation {}

    /** Too many wrong ones; this one was not looked at. */
    record Throttled(Duration retryAfter) implements Confirmation {}
}
