package wallchart.people;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Optional;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;

/**
 * Argon2id with 19 MiB, two passes, one lane: the lowest setting the OWASP Password Storage Cheat Sheet recommends (from
 * memory); about a tenth of a second each.
 */
final class PasswordHashes {

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int LANES = 1;
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;

    private static final Argon2PasswordEncoder ARGON2 =
            new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, MEMORY_KIB, PASSES);

    /** Compared with when there is no such name, so that the answer takes as long. */
    private static final String NOBODY = ARGON2.encode(Secrets.newToken());

    private PasswordHashes() {}

    static String of(String password) {
        return ARGON2.encode(normalized(password));
    }

    /** Whether it is the password; does the same work when there is no hash to compare with, and then says no. */
    static boolean matches(String password, Optional<String> hash) {
        var possible = password.length() <= PasswordRules.LONGEST && isText(password);
        var same = ARGON2.matches(possible ? normalized(password) : "", hash.orElse(NOBODY));
        return same && hash.isPresent() && possible;
    }

    /** Whether it has no half of a character, of which there is no hash. */
    static boolean isText(String password) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(password);
    }

    /** One form for letters that keyboards compose differently. */
    private static String normalized(String password) {
        return Normalizer.normalize(password, Normalizer.Form.NFC);
    }
}
