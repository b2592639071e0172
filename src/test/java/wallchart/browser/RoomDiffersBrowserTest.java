package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What differs from the row for one patient stands beside the figures, and never reaches the next patient unseen. */
class RoomDiffersBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String WET = "Wet plaster cast (mAs × 3)";

    private static RoomPage room;

    private static RoomPage room() {
        if (room == null) {
            room = RoomPage.open(SITE, Screen.SMALL, "r1");
        }
        return room.press("Escape");
    }

    @AfterAll
    static void close() {
        room.visit().assertClean();
        room.close();
    }

    private static void wetCast(String asked) {
        room().type(asked);
        assertThat(room.technique()).isVisible();
        room.button("Wet plaster cast").click();
        assertKept();
    }

    private static void assertKept() {
        assertThat(room.page().locator(".with")).hasText("With: " + WET);
        assertThat(room.page().locator("#news")).isEmpty();
        assertThat(room.button("Wet plaster cast")).hasAttribute("aria-pressed", "true");
    }

    private static void assertDropped() {
        assertThat(room.page().locator("#news")).containsText("As charted again. Not taken over: " + WET);
        assertThat(room.technique()).isVisible();
        assertThat(room.page().locator(".with")).hasCount(0);
        assertThat(room.button("Wet plaster cast")).hasAttribute("aria-pressed", "false");
    }

    @Test
    void an_adjustment_is_said_beside_the_figures_and_read_out_with_all_that_differs() {
        wetCast("ka12.4");
        assertThat(room.page().locator("#technique-title")).hasText("Technique for 12.4 cm, with " + WET);
        assertThat(room.page().locator("#said")).hasText("62 kV, 50 mAs, for 12.4 cm, with " + WET);
        room.button("no grid").click();
        assertThat(room.page().locator("#technique-title"))
                .hasText("Technique for 12.4 cm, with " + WET + "; no grid, chart 10:1 f 110");
        assertThat(room.page().locator("#said")).containsText("; no grid, chart 10:1 f 110");
        room.press("Escape").type("ka12.4");
        assertThat(room.technique()).isVisible();
        assertThat(room.page().locator(".with")).hasCount(0);
        room.button("Fibreglass cast").click();
        assertThat(room.page().locator(".with")).hasText("With: Fibreglass cast (+3 kV)");
        assertThat(room.page().locator("#said")).hasAttribute("role", "status");
    }

    @Test
    void two_adjustments_at_once_are_cautioned() {
        wetCast("ka12.4");
        room.button("Dry plaster cast").click();
        assertThat(room.page().locator(".cautions"))
                .containsText("Wet plaster cast and Dry plaster cast add up, mAs x 6 in all");
    }

    @Test
    void a_step_and_a_digit_more_or_less_keep_what_differs() {
        wetCast("ka12");
        room.type("+");
        assertThat(room.thickness()).hasValue("12.5");
        assertKept();
        room.thickness().focus();
        room.press("End")
                .press("Backspace")
                .press("Backspace")
                .press("Backspace")
                .type("1.5");
        assertThat(room.thickness()).hasValue("11.5");
        assertKept();
        room.press("End").press("Backspace").press("Backspace").type(".8");
        assertThat(room.thickness()).hasValue("11.8");
        assertKept();
        room.page().locator("#scale").focus();
        room.press("ArrowRight");
        assertKept();
    }

    @Test
    void a_number_in_the_place_of_another_begins_as_charted_and_says_so_until_it_is_put_back() {
        wetCast("ka12.4");
        room.page().locator("#sid").fill("112");
        room.page().locator("#sid").blur();
        assertThat(room.set("SID 112 cm, chart 110 cm")).hasText("112cm");
        room.page().locator("#body").click(); // from anywhere: the first digit takes the place of all of them
        room.type("11");
        assertDropped();
        assertThat(room.page().locator("#news")).containsText(WET + "; SID 112 cm.");
        assertThat(room.page().locator("#news")).hasAttribute("role", "status");
        assertThat(room.set("SID")).hasText("110cm");
        assertThat(room.thickness()).hasValue("11");
        room.visit().assertAccessible();
        room.button("Same patient: put back").click();
        assertThat(room.set("SID 112 cm, chart 110 cm")).hasText("112cm");
        assertKept();
    }

    @Test
    void what_was_not_taken_over_is_forgotten_at_the_number_after_that() {
        wetCast("ka12");
        room.thickness().selectText();
        room.type("11");
        assertDropped();
        room.thickness().selectText();
        room.type("10");
        assertThat(room.page().locator("#news")).isEmpty();
    }

    @Test
    void an_emptied_field_and_a_touch_on_the_scale_begin_another_number() {
        wetCast("ka12");
        room.thickness().focus();
        room.press("End").press("Backspace").press("Backspace").type("11");
        assertDropped();
        wetCast("ka9");
        room.page().locator("#scale").click();
        assertThat(room.thickness()).hasValue("12");
        assertDropped();
    }

    @Test
    void the_same_examination_found_again_is_another_patient() {
        wetCast("ka12");
        room.type("ka12");
        assertDropped();
        room.button("Same patient: put back").click();
        assertKept();
        room.press("Escape").type("ka12");
        assertThat(room.technique()).isVisible();
        assertThat(room.page().locator("#news")).isEmpty();
    }

    @Test
    void an_adjustment_chosen_before_the_thickness_is_for_this_patient() {
        room().type("ka").press("Enter");
        room.button("Wet plaster cast").click();
        room.type("12");
        assertKept();
    }
}
