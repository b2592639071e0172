package wallchart.people;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;

/**
 * Which passwords a person may choose: long, not one of the first anybody would try, no rule about kinds of characters and
 * no expiry (NIST SP 800-63B-4, 3.1.1.2, from memory: at least 15 characters where the password is the only factor).
 */
final class PasswordRules {

    static final int SHORTEST = 15;
    /** Room for a long sentence; a bound on the work of hashing. */
    static final int LONGEST = 256;

    private PasswordRules() {}

    static Optional<Refused> check(String password, String name) {
        var length = password.codePointCount(0, password.length());
        if (Secrets.isForDemonstration(password)) {
            return refuse(Reason.PASSWORD_FOR_DEMONSTRATION, "password begins with \"demo-\": choose another");
        }
        if (length < SHORTEST) {
            return refuse(
                    Reason.PASSWORD_TOO_SHORT,
                    "password has " + length + " characters, at least " + SHORTEST + ": several words do well");
        }
        if (password.length() > LONGEST) {
            return refuse(Reason.PASSWORD_TOO_LONG, "password has more than " + LONGEST + " characters: shorten it");
        }
        if (!PasswordHashes.isText(password) || !Normalizer.isNormalized(password, Normalizer.Form.NFC)) {
            return refuse(
                    Reason.PASSWORD_NOT_NORMALIZED,
                    "password has letters composed of parts (not Unicode NFC): type it anew, or without accents");
        }
        return easilyGuessed(password.toLowerCase(Locale.ROOT), name);
    }

    private static Optional<Refused> easilyGuessed(String password, String name) {
        if (password.contains(name)) {
            return refuse(Reason.PASSWORD_HAS_NAME, "password contains the name \"" + name + "\": choose another");
        }
        if (CommonPasswords.has(password)) {
            return refuse(Reason.PASSWORD_COMMON, "password is one of the first anybody would try: choose another");
        }
        return Optional.empty();
    }

    private static Optional<Refused> refuse(Reason reason, String text) {
        return Optional.of(new Refused(reason, text));
    }
}
