package wallchart.people;

import java.time.Duration;

/**
 * How long a session lasts and how often a password may be wrong.
 *
 * @param idle a session nobody used for this long is over
 * @param absolute a session is over after this long, used or not
 * @param wrongPasswords so many wrong ones for one name from one address, and the next is not looked at
 * @param window within this time
 */
public record SignInSettings(Duration idle, Duration absolute, int wrongPasswords, Duration window) {

    /** 15 minutes idle, 12 hours (a long shift), 5 wrong passwords in 5 minutes. */
    public static final SignInSettings DEFAULTS =
            new SignInSettings(Duration.ofMinutes(15), Duration.ofHours(12), 5, Duration.ofMinutes(5));

    public SignInSettings {
        if (idle.compareTo(Duration.ofMinutes(2)) < 0 || absolute.compareTo(idle) < 0) {
            throw new IllegalArgumentException("session limits are " + idle + " idle and " + absolute
                    + " in all: idle at least 2 minutes, in all not less than idle");
        }
        if (wrongPasswords < 1 || window.toSeconds() < 1) {
            throw new IllegalArgumentException("wrong passwords allowed are " + wrongPasswords + " within " + window
                    + ": at least 1 within at least 1 second");
        }
    }
}
