package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From an open room page to the examination and its thickness: by letters, by touch, and never to another patient group's row. */
class RoomFindingBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static RoomPage small;

    /** As the next patient finds it. */
    private static RoomPage small() {
        if (small == null) {
            small = RoomPage.open(SITE, Screen.SMALL, "r1");
        }
        small.page().evaluate("localStorage.removeItem('wallchart.keys')");
        return small.press("Escape");
    }

    @AfterAll
    static void close() {
        small.visit().assertClean();
        small.close();
    }

    private static final String COUNT =
            "window.counted = 0; addEventListener('%s', () => { window.counted += 1; }, true)";

    private static int counted(RoomPage room) {
        return ((Number) room.page().evaluate("window.counted")).intValue();
    }

    @Test
    void a_technique_takes_four_keys_and_half_a_centimetre_one_more() {
        var room = small();
        room.page().evaluate(COUNT.formatted("keydown"));
        room.type("ka12");
        assertThat(room.set("Current-time product")).hasText("16mAs");
        assertThat(counted(room)).isEqualTo(4);
        room.type("+");
        assertThat(room.thickness()).hasValue("12.5");
        assertThat(room.technique()).isVisible();
        assertThat(counted(room)).isEqualTo(5);
        room.visit().assertClean();
    }

    @Test
    void a_technique_takes_three_touches() {
        try (var room = RoomPage.open(SITE, Screen.TOUCH, "r1")) {
            var page = room.page();
            page.evaluate(COUNT.formatted("pointerdown"));
            assertThat(room.hidden()).isEmpty();
            page.getByRole(AriaRole.BUTTON, new com.microsoft.playwright.Page.GetByRoleOptions().setName("Knee"))
                    .tap();
            assertThat(room.hidden()).isEmpty();
            room.button("Knee AP").filter(with("table bucky")).tap();
            assertThat(page.locator(".measure")).containsText("apex of the patella");
            assertThat(room.technique()).hasCount(0);
            page.locator("#scale").tap();
            assertThat(room.technique()).isVisible();
            assertThat(room.thickness()).hasValue("12");
            assertThat(counted(room)).isEqualTo(3);
            assertThat(room.hidden()).isEmpty();
            room.visit().assertClean();
        }
    }

    private static com.microsoft.playwright.Locator.FilterOptions with(String text) {
        return new com.microsoft.playwright.Locator.FilterOptions().setHasText(text);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "kn ap, Knee AP",
                "ap kn, Knee AP",
                "ka, Knee AP",
                "lsl, Lumbar spine Lateral",
                "cp, Chest PA",
                "chest lat, Chest Lateral",
                "lspine, Lumbar spine AP",
                "KNEE LAT, Knee Lateral",
                "dorsopl, Foot Dorsoplantar",
            })
    void a_few_letters_in_any_order_find_it_for_an_adult(String letters, String found) {
        var room = small();
        room.type(letters);
        var first = room.options().first();
        assertThat(first.locator(".what")).hasText(found);
        assertThat(first.locator(".group")).hasText("Adult");
        assertThat(first).hasAttribute("aria-selected", "true");
    }

    @Test
    void every_line_of_every_list_names_its_patient_group_and_adults_come_first() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r3")) {
            for (var letters : List.of("ch", "abd", "ha", "pelvis", "infant", "child", "preterm")) {
                room.press("Escape").page().locator("#find").fill(letters);
                assertThat(room.options().first()).isVisible();
                var groups = room.options().locator(".group").allTextContents();
                assertThat(groups).hasSize(room.options().count()).noneMatch(String::isBlank);
            }
            room.press("Escape").type("chest ap");
            assertThat(room.options().locator(".group").allTextContents())
                    .startsWith("Adult")
                    .contains("Preterm, under 2.5 kg");
        }
    }

    @Test
    void a_list_longer_than_the_screen_says_so_and_every_line_is_reached() {
        var room = small();
        room.type("ch");
        var part = room.page().locator(".part");
        assertThat(part).containsText(java.util.regex.Pattern.compile("^8 of \\d+ that fit: type another letter."));
        assertThat(room.page().locator("#said"))
                .hasText(java.util.regex.Pattern.compile("^8 of \\d+ that fit: type another letter"));
        int all = Integer.parseInt(room.options().first().getAttribute("aria-setsize"));
        assertThat(part).containsText("8 of " + all);
        var seen = new java.util.HashSet<String>();
        for (int line = 0; line < all; line++) {
            var marked = room.page().locator("[aria-selected=true]");
            assertThat(marked).hasAttribute("aria-posinset", String.valueOf(line + 1));
            assertThat(room.page().locator("#find")).hasAttribute("aria-activedescendant", "match-" + line);
            seen.add(marked.innerText());
            room.press("ArrowDown");
        }
        assertThat(seen).hasSize(all);
        assertThat(room.hidden()).isEmpty();
        room.visit().assertAccessible();
        room.press("Escape").type("ch");
        part.getByText("More").click();
        assertThat(part).containsText("9 to 16 of " + all + " that fit");
        assertThat(room.page().locator("#find")).isFocused();
        room.type("est ap infant");
        assertThat(part).hasCount(0);
    }

    @Test
    void a_chosen_patient_group_shows_no_other_and_its_name_stands_beside_the_technique() {
        var room = small();
        room.button("Child 5 to 9 years").click();
        room.type("ka");
        assertThat(room.options().locator(".group")).hasText(new String[] {"Child 5 to 9 years"});
        room.type("8");
        assertThat(room.technique()).isVisible();
        assertThat(room.chosen()).containsText("Child 5 to 9 years");
        room.press("Escape");
        assertThat(room.button("All, adults first")).hasAttribute("aria-pressed", "true");
    }

    @Test
    void arrows_choose_and_the_digits_are_the_thickness_of_the_one_that_is_marked() {
        var room = small();
        room.type("ka").press("ArrowDown");
        assertThat(room.page().locator("#find")).hasAttribute("aria-activedescendant", "match-1");
        room.press("ArrowDown")
                .press("ArrowUp")
                .press("ArrowUp")
                .press("ArrowUp")
                .press("ArrowDown");
        room.type("9");
        assertThat(room.chosen()).hasText(java.util.regex.Pattern.compile("Knee AP\\s+tabletop\\s+Adult"));
        assertThat(room.technique()).isVisible();
    }

    @Test
    void nothing_is_answered_before_a_thickness_was_entered_and_where_to_measure_is_shown_at_once() {
        var room = small();
        room.type("ka").press("Enter");
        assertThat(room.chosen()).isVisible();
        assertThat(room.page().locator(".measure")).containsText("apex of the patella");
        assertThat(room.page().locator(".prompt")).hasText("Measure, then enter the thickness.");
        assertThat(room.page().locator("#scale")).hasAttribute("aria-valuetext", "not entered yet");
        room.press("+");
        assertThat(room.thickness()).hasValue("");
        room.press("1");
        assertThat(room.page().locator(".prompt")).isVisible();
        assertThat(room.refusal()).hasCount(0);
        room.press("2");
        assertThat(room.technique()).isVisible();
    }

    @Test
    void a_thickness_stays_for_another_support_and_goes_with_another_projection() {
        var room = small();
        room.type("ka11");
        assertThat(room.technique()).isVisible();
        room.type("kl");
        assertThat(room.technique()).hasCount(0);
        room.press("Enter");
        assertThat(room.chosen()).containsText("Knee Lateral");
        assertThat(room.thickness()).hasValue("");
    }

    @Test
    void what_is_typed_while_the_chart_is_being_opened_counts_whole() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var held = new java.util.concurrent.atomic.AtomicReference<com.microsoft.playwright.Route>();
            visit.page().route("**/pack", held::set);
            var page = visit.open("/rooms/r1#token=demo-r1");
            page.waitForCondition(() -> held.get() != null);
            page.keyboard().type("kn ap tab");
            held.get().resume();
            assertThat(page.locator("#find")).hasValue("kn ap tab");
            assertThat(page.locator("#match-0")).containsText("Knee");
        }
    }

    @Test
    void escape_clears_everything_for_the_next_patient() {
        var room = small();
        room.type("ka12");
        room.button("Fibreglass cast").click();
        assertThat(room.button("Fibreglass cast")).hasAttribute("aria-pressed", "true");
        room.press("Escape");
        assertThat(room.page().locator(".regions")).isVisible();
        assertThat(room.page().locator("#find")).hasValue("");
        room.type("ka12");
        assertThat(room.button("Fibreglass cast")).hasAttribute("aria-pressed", "false");
        assertThat(room.page().evaluate("Object.keys(localStorage).sort().join()"))
                .isEqualTo("wallchart.token.r1");
    }

    @Test
    void what_fits_nothing_says_so_and_a_digit_then_does_nothing() {
        var room = small();
        room.type("zzq");
        assertThat(room.page().locator("#matches")).containsText("Nothing on this room's chart begins like that.");
        room.type("12");
        assertThat(room.technique()).hasCount(0);
        room.page().locator("#find").fill("<img src=x onerror=alert(1)>");
        room.page().locator("#find").fill("(((*[\\");
        assertThat(room.page().locator("#matches")).containsText("Nothing on this room's chart");
        room.visit().assertClean();
    }

    @Test
    void a_paste_or_a_keyboard_on_the_screen_may_bring_letters_and_digits_at_once() {
        try (var room = RoomPage.open(SITE, Screen.TOUCH, "r1")) {
            room.page().locator("#find").fill("ka12,5");
            assertThat(room.technique()).isVisible();
            assertThat(room.thickness()).hasValue("12,5");
        }
    }

    @Test
    void keys_that_count_anywhere_can_be_turned_off() {
        var room = small();
        room.button("Workstation").click();
        room.page().getByLabel("Letters and digits count anywhere on the page").uncheck();
        room.visit().assertAccessible();
        room.button("Done").click();
        room.page().locator("body").click();
        room.type("ka12");
        assertThat(room.page().locator(".regions")).isVisible();
        room.page().locator("#find").click();
        room.type("ka12");
        assertThat(room.technique()).isVisible();
    }

    @Test
    void the_whole_task_is_done_by_the_keyboard_alone_and_the_focus_is_never_lost() {
        var room = small();
        var page = room.page();
        page.locator("#find").focus();
        for (int i = 0; i < 60 && !focusedText(room).equals("Knee"); i++) {
            room.press("Tab");
        }
        room.press("Enter");
        assertThat(page.locator("#opened")).isFocused();
        for (int i = 0; i < 9 && !focusedText(room).contains("table bucky"); i++) {
            room.press("Tab");
        }
        room.press("Enter");
        assertThat(page.locator("#scale")).isFocused();
        room.press("ArrowRight");
        assertThat(room.thickness()).hasValue("8.5");
        assertThat(room.technique()).isVisible();
        assertThat(page.locator("#scale")).isFocused();
        for (int i = 0; i < 30 && !focusedText(room).equals("Wet plaster cast"); i++) {
            room.press("Tab");
        }
        room.press(" ");
        assertThat(room.button("Wet plaster cast")).isFocused();
        assertThat(room.button("Wet plaster cast")).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("[role=status]#said"))
                .hasText(java.util.regex.Pattern.compile("\\d+ kV, .* mAs, for 8.5 cm"));
    }

    private static String focusedText(RoomPage room) {
        return (String) room.page().evaluate("document.activeElement.innerText ?? ''");
    }
}
