package wallchart.chart;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Named texts that people wrote, read field by field; gathers what cannot be read. Blanks around a text do not count, and the
 * text is brought to Unicode normal form C. Not thread-safe; lives for one reading.
 */
final class FieldTexts {

    private static final int LONGEST_NUMBER = 12;
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(?:\\.[0-9]+)?");

    private final Map<String, String> texts;
    private final List<RowReading.Problem> problems = new ArrayList<>();

    FieldTexts(Map<String, String> texts) {
        this.texts = texts;
    }

    List<RowReading.Problem> problems() {
        return problems;
    }

    void problem(String field, String message) {
        problems.add(new RowReading.Problem(field, message));
    }

    /** The text, empty where nothing is written. */
    String text(String field) {
        return Normalizer.normalize(texts.getOrDefault(field, "").strip(), Normalizer.Form.NFC);
    }

    boolean isEmpty(String field) {
        return text(field).isEmpty();
    }

    /** What the function makes of a text that must be there. */
    <T> Optional<T> required(String field, Function<String, T> making) {
        if (isEmpty(field)) {
            problem(field, "is empty: it must be given");
            return Optional.empty();
        }
        return optional(field, making);
    }

    /** What the function makes of a text that may be empty; empty too where it refuses, and then there is a problem. */
    <T> Optional<T> optional(String field, Function<String, T> making) {
        return isEmpty(field) ? Optional.empty() : at(field, () -> making.apply(text(field)));
    }

    <T> Optional<T> at(String field, Supplier<T> making) {
        try {
            return Optional.of(making.get());
        } catch (IllegalArgumentException impossible) {
            problem(field, impossible.getMessage());
            return Optional.empty();
        }
    }

    /**
     * A number in plain decimal digits.
     *
     * @throws IllegalArgumentException for anything else, such as an exponent, a comma or a word
     */
    static BigDecimal number(String digits) {
        if (digits.length() > LONGEST_NUMBER || !NUMBER.matcher(digits).matches()) {
            throw new IllegalArgumentException("\"" + shortened(digits)
                    + "\" is no number: write plain digits with a decimal point, at most " + LONGEST_NUMBER
                    + " characters, such as 12.5");
        }
        return new BigDecimal(digits);
    }

    /** A whole number in plain digits. */
    static Integer whole(String digits) {
        try {
            return number(digits).intValueExact();
        } catch (ArithmeticException fraction) {
            throw new IllegalArgumentException("\"" + digits + "\" is no whole number");
        }
    }

    /** Turns the finding of a word in a list into a value, or refuses naming the words. */
    static <T> Function<String, T> word(Function<String, Optional<T>> find, String choices) {
        return text -> find.apply(text)
                .orElseThrow(() -> new IllegalArgumentException("\"" + shortened(text) + "\": write " + choices));
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
