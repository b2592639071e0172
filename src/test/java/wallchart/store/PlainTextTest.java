package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which texts may stand in the record: those of which a reader sees all. */
class PlainTextTest {

    /**
     * General categories of the Unicode Character Database: Cc (NUL, ESC, line feed), Cs (half a character), Cn, Cf (U+202E turns the
     * direction of writing, U+2066, U+200B, U+FEFF, U+00AD, a tag), Zl, Zp, Co.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000",
                "\u001b[2J",
                "\n",
                "\ud800",
                "\uffff",
                "\u202e",
                "\u2066",
                "\u200b",
                "\ufeff",
                "\u00ad",
                "\udb40\udc41",
                "\u2028",
                "\u2029",
                "\ue000",
                "\udb80\udc00"
            })
    void a_character_that_nobody_sees_keeps_a_text_out(String hidden) {
        assertThat(PlainText.problem("Room " + hidden + "1", 120)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Room 1, ground floor",
                "Röntgenraum 2 – „Süd“",
                "Кабинет № 3",
                "कमरा १, र्‍",
                "خانه‌ها",
                "5 µGy/mAs, 1 m²",
                "胸部 正面",
                "",
                "x\u0323\u0331"
            })
    void words_of_any_script_are_kept(String words) {
        assertThat(PlainText.problem(words, 120)).isEmpty();
    }

    @Test
    void four_marks_on_a_letter_are_kept_and_a_heap_of_them_is_not() {
        assertThat(PlainText.problem("x" + "\u0331".repeat(4), 2000)).isEmpty();
        assertThat(PlainText.problem("x" + "\u0331".repeat(5), 2000).orElseThrow())
                .startsWith("heaps more than 4 marks");
        assertThat(PlainText.problem("x" + "\u0331".repeat(1000), 2000)).isPresent();
    }

    @Test
    void a_text_is_at_most_as_long_as_is_kept() {
        assertThat(PlainText.problem("x".repeat(120), 120)).isEmpty();
        assertThat(PlainText.problem("x".repeat(121), 120).orElseThrow()).startsWith("has 121 characters, at most 120");
    }

    @Test
    void an_older_text_with_a_soft_hyphen_keeps_its_digest() {
        assertThat(PlainText.unencodable("Ober\u00adschenkel")).isEmpty();
        assertThat(PlainText.unencodable("half \ud800")).isPresent();
    }

    /** UTF-8 writes a question mark for half a character unless it is told not to: two texts would share one digest. */
    @Test
    void half_a_character_has_no_digest() {
        assertThatThrownBy(() -> Sha256.hex("room \ud800"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("half a character");
        assertThat(Sha256.hex("room ?")).hasSize(64);
        assertThat(Sha256.hex("\ud83e\ude7b")).hasSize(64);
    }
}
