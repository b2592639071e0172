package wallchart.people;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Long passwords that are easily guessed all the same: a short list, and everything that repeats or counts. */
final class CommonPasswords {

    private static final int FEWEST_DIFFERENT_CHARACTERS = 5;
    private static final int LONGEST_REPEATED_PIECE = 8;
    private static final String LIST = "/people/common-passwords.txt";
    private static final Set<String> KNOWN = read();

    private CommonPasswords() {}

    /** Whether that password, in lower case, is easily guessed. */
    static boolean has(String password) {
        return password.chars().distinct().count() < FEWEST_DIFFERENT_CHARACTERS
                || repeats(password)
                || counts(password)
                || KNOWN.contains(lettersAndDigits(password));
    }

    private static boolean repeats(String password) {
        for (int piece = 1; piece <= LONGEST_REPEATED_PIECE; piece++) {
            if (password.substring(piece).equals(password.substring(0, password.length() - piece))) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is mostly steps of one up or down, such as abcdefghijklmno or 123456789012345. */
    private static boolean counts(String password) {
        int steps = 0;
        for (int i = 1; i < password.length(); i++) {
            steps += Math.abs(password.charAt(i) - password.charAt(i - 1)) == 1 ? 1 : 0;
        }
        return steps * 3 >= password.length() * 2;
    }

    private static String lettersAndDigits(String password) {
        return password.replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static Set<String> read() {
        var list = Objects.requireNonNull(CommonPasswords.class.getResourceAsStream(LIST), LIST);
        try (var reader = new BufferedReader(new InputStreamReader(list, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
