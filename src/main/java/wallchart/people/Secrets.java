package wallchart.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import wallchart.store.Sha256;

/** Random tokens, and the only form in which they are kept. */
final class Secrets {

    /** What every secret known to everybody begins with; refused outside a demonstration. */
    static final String DEMONSTRATION = "demo-";

    /** Longer than any token we hand out; anything longer is not looked at. */
    static final int LONGEST_TOKEN = 64;

    private static final int RANDOM_BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    /** 256 random bits as 43 characters that need no escaping in a header or a cookie. */
    static String newToken() {
        var bytes = new byte[RANDOM_BYTES];
        String token;
        do {
            RANDOM.nextBytes(bytes);
            token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        } while (isForDemonstration(token)); // one in a thousand million would be refused by its beginning
        return token;
    }

    /** SHA-256 in lower-case hexadecimal: enough for a secret of 256 random bits, not for a password. */
    static String hash(String token) {
        return Sha256.hex(token);
    }

    /** Compares in a time that does not depend on where they differ. */
    static boolean matches(String token, String hash) {
        return MessageDigest.isEqual(
                hash(token).getBytes(StandardCharsets.US_ASCII), hash.getBytes(StandardCharsets.US_ASCII));
    }

    static boolean isForDemonstration(String secret) {
        return secret.startsWith(DEMONSTRATION);
    }
}
