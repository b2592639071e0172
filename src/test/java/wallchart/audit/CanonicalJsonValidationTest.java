package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.CharacterCodingException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.Validation;
import wallchart.store.Sha256;

/**
 * The examples of RFC 8785 (JSON Canonicalization Scheme, June 2020), sections 3.2.2 and 3.2.3, against both ways in which an
 * event becomes bytes: {@link LedgerEncoding}, which writes the ledger, and {@link ChainText}, which checks it. The examples were
 * compared with copies of them in public source code, the sentences are from memory.
 *
 * <p>Not there: numbers as ECMAScript writes them (sections 3.2.2.3 and appendix B), because the ledger's details hold integers
 * and decimal texts only. That such numbers are refused, and not written somehow, is checked below.
 */
class CanonicalJsonValidationTest {

    /** Section 3.2.2: the member "string" of the example as it is parsed, and as it is to be written. */
    private static final String TEXT = "\u20ac$\u000f\nA'B\"\\\\\"/";

    private static final String WRITTEN = "\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"";

    private final ChainText check = new ChainText();

    @Validation
    @Test
    void strings_are_written_as_in_the_example_of_section_3_2_2() {
        assertThat(LedgerEncoding.details(Map.of("string", TEXT))).isEqualTo("{\"string\":" + WRITTEN + "}");
        for (var text : both(event(TEXT, "{}"))) {
            assertThat(text).contains("\"reason\":" + WRITTEN + ",");
        }
    }

    /** Section 3.2.2, the member "literals": {@code [null, true, false]}. */
    @Validation
    @Test
    void literals_are_written_as_in_the_example_of_section_3_2_2() {
        var literals = new ArrayList<Object>();
        literals.add(null);
        literals.addAll(List.of(true, false));
        var details = LedgerEncoding.details(Map.of("literals", literals));
        assertThat(details).isEqualTo("{\"literals\":[null,true,false]}");
        assertThat(both(event("", details))).allSatisfy(text -> assertThat(text).contains("\"details\":" + details));
    }

    /**
     * Section 3.2.3, names in the order of their UTF-16 code units. By code points the emoji would stand last; by bytes of UTF-8
     * too.
     */
    @Validation
    @Test
    void names_are_sorted_as_in_the_example_of_section_3_2_3() {
        var names = new HashMap<String, String>();
        names.put("\u20ac", "Euro Sign");
        names.put("\r", "Carriage Return");
        names.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
        names.put("1", "One");
        names.put("\ud83d\ude00", "Emoji: Grinning Face");
        names.put("\u0080", "Control");
        names.put("\u00f6", "Latin Small Letter O With Diaeresis");
        var details = LedgerEncoding.details(names);

        assertThat(details)
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
        assertThat(both(event("", details))).allSatisfy(text -> assertThat(text).contains("\"details\":" + details));
    }

    /** Section 3.2.3 for the event's own members, which ChainText writes in an order of its own. */
    @Validation
    @Test
    void the_members_of_an_event_are_sorted_by_both() {
        for (var text : both(event("", "{}"))) {
            var names = new ArrayList<String>();
            var name = java.util.regex.Pattern.compile("[{,]\"(\\w+)\":").matcher(text);
            while (name.find()) {
                names.add(name.group(1));
            }
            assertThat(names).hasSize(11).isSorted();
        }
    }

    /**
     * Section 3.2.2.2: U+0000 to U+001F as lower-case \\uhhhh unless one of \\b \\t \\n \\f \\r; everything else as it is, unless
     * reverse solidus or quotation mark.
     */
    @Validation
    @ParameterizedTest
    @CsvSource({
        "0, \\u0000",
        "7, \\u0007",
        "8, \\b",
        "9, \\t",
        "10, \\n",
        "11, \\u000b",
        "12, \\f",
        "13, \\r",
        "14, \\u000e",
        "27, \\u001b",
        "31, \\u001f",
        "34, \\\"",
        "92, \\\\"
    })
    void a_control_character_is_escaped_as_section_3_2_2_2_says(int character, String escape) {
        var raw = "a" + (char) character + "b";
        assertThat(both(event(raw, "{}")))
                .allSatisfy(text -> assertThat(text).contains("\"reason\":\"a" + escape + "b\""));
    }

    @Validation
    @ParameterizedTest
    @ValueSource(ints = {0x20, 0x2f, 0x7f, 0x80, 0xf6, 0x2028, 0x20ac, 0xfb33, 0xffff, 0x1f600})
    void every_other_character_is_written_as_it_is(int character) {
        var raw = new StringBuilder().appendCodePoint(character).toString();
        assertThat(both(event(raw, "{}"))).allSatisfy(text -> assertThat(text).contains("\"reason\":\"" + raw + "\""));
    }

    /** Section 3.2.2.2: a lone surrogate, for instance U+DEAD, must end with an error. */
    @Validation
    @ParameterizedTest
    @ValueSource(strings = {"\udead", "a\ud83d", "\ud83d\ud83d\ude00"})
    void half_a_character_is_an_error_for_both(String lone) {
        assertThat(Ledger.findTextProblem(LedgerEncoding.text(event(lone, "{}"))))
                .isPresent();
        assertThatThrownBy(() -> check.hash(event(lone, "{}"))).isInstanceOf(CharacterCodingException.class);
    }

    /** Section 3.2.2, the member "numbers" of the example: numbers that the ledger does not write, so it must not take them. */
    @Validation
    @ParameterizedTest
    @ValueSource(doubles = {333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001})
    void a_number_of_the_example_is_refused(double number) {
        for (var details :
                List.of(Map.of("n", number), Map.of("n", List.of(number)), Map.of("n", Map.of("m", number)))) {
            assertThatThrownBy(() -> LedgerEncoding.details(details)).hasMessageContaining("decimal text");
        }
    }

    /** RFC 7493 (I-JSON), section 2.2: integers that every language reads alike lie in [-(2**53)+1, (2**53)-1]. From memory. */
    @Validation
    @Test
    void integers_are_taken_up_to_two_to_the_53_and_no_further() {
        long largest = 9_007_199_254_740_991L;
        assertThat(LedgerEncoding.details(new TreeMap<>(Map.of("a", largest, "b", -largest))))
                .isEqualTo("{\"a\":9007199254740991,\"b\":-9007199254740991}");
        for (long beyond : new long[] {largest + 1, -largest - 1, Long.MAX_VALUE, Long.MIN_VALUE}) {
            assertThatThrownBy(() -> LedgerEncoding.details(Map.of("n", beyond)))
                    .hasMessageContaining("decimal text");
        }
    }

    /** Section 3.2.4: the text is hashed as UTF-8. */
    @Validation
    @Test
    void the_bytes_are_utf_8_for_both() throws CharacterCodingException {
        var event = event(TEXT + "\ud83d\ude00\u00f6", "{\"\u20ac\":\"\ufb33\"}");
        assertThat(check.hash(event))
                .isEqualTo(LedgerEncoding.hash(event))
                .isEqualTo(Sha256.hex(ChainText.text(event).getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static List<String> both(Event event) {
        return List.of(LedgerEncoding.text(event), ChainText.text(event));
    }

    private static Event event(String reason, String details) {
        return new Event(
                1,
                Instant.parse("2026-03-02T08:00:00Z"),
                "lead",
                "lead",
                "change-signed",
                "change/12",
                Optional.of("r1"),
                reason,
                details,
                Optional.empty(),
                Event.NONE_BEFORE,
                "");
    }
}
