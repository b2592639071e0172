package wallchart.print;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The number of one printed sheet: 12 letters and digits that nobody takes for one another (no vowels, so no words; no 0, 1, I, L, O,
 * 5 beside S, 8 beside B, 2 beside Z). Drawn by lot, over 55 bits: nobody guesses the number of a sheet they never saw.
 *
 * @param text as it is stored, in capital letters
 */
public record SheetNumber(String text) {

    static final String ALPHABET = "34679CDFGHJKMNPQRTVWXYBZS";
    private static final int LENGTH = 12;
    private static final int GROUP = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    public SheetNumber {
        if (text.length() != LENGTH || !text.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0)) {
            throw new IllegalArgumentException("\"" + text + "\" is no sheet number");
        }
    }

    static SheetNumber drawn() {
        return new SheetNumber(RANDOM.ints(LENGTH, 0, ALPHABET.length())
                .mapToObj(i -> ALPHABET.substring(i, i + 1))
                .collect(Collectors.joining()));
    }

    /** The number that somebody typed, with or without hyphens, in small letters or capital ones. */
    public static Optional<SheetNumber> find(String typed) {
        var plain = typed.replace("-", "").toUpperCase(Locale.ROOT);
        boolean possible = plain.length() == LENGTH && plain.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0);
        return possible ? Optional.of(new SheetNumber(plain)) : Optional.empty();
    }

    /** In groups of four, as it is read aloud and typed. */
    public String grouped() {
        return text.replaceAll("(.{" + GROUP + "})(?=.)", "$1-");
    }
}
