package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** That the room page can be read: at 2 m, without scrolling, in both themes, by a screen reader; and how much of it is sent. */
class RoomReadingBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    /**
     * 16 minutes of arc at 2 m (ISO 9241-303, from memory) are 2000 mm x tan(16/60 degrees) = 9.3 mm; a 10-inch screen of 1280 pixels is
     * 217 mm wide.
     */
    private static final double LEGIBLE_PX = 2000 * Math.tan(Math.toRadians(16 / 60.0)) * 1280 / 217;

    /** Examinations of each kind: manual, by AEC, for children, with long positioning texts, with cautions. */
    private static final List<String> USUAL = List.of(
            "ka12",
            "cp22",
            "lsl30",
            "hip ap adult18",
            "hand pa adult3",
            "chest ap neonate8",
            "abdomen ap20",
            "skull lat15");

    @ParameterizedTest
    @EnumSource
    void every_state_is_accessible_and_in_sight_at_every_screen_in_both_themes(Screen screen) {
        try (var room = RoomPage.open(SITE, screen, "r1")) {
            states(room, screen, "light");
            room.press("Escape").dimmed();
            states(room, screen, "dim");
            room.visit().assertClean();
        }
    }

    private static void states(RoomPage room, Screen screen, String theme) {
        look(room, screen, theme, "parts");
        room.button("Chest").first().click();
        look(room, screen, theme, "part");
        room.press("Escape").type("ka");
        look(room, screen, theme, "list");
        room.type("12");
        assertThat(room.technique()).isVisible();
        look(room, screen, theme, "technique");
        room.press("Escape").type("cp22");
        assertThat(room.technique()).isVisible();
        look(room, screen, theme, "aec");
        room.press("Escape").type("ka40");
        assertThat(room.refusal()).isVisible();
        look(room, screen, theme, "refusal");
    }

    private static void look(RoomPage room, Screen screen, String theme, String state) {
        room.visit().picture("room-" + state + "-" + screen.name().toLowerCase(Locale.ROOT) + "-" + theme);
        room.visit().assertAccessible();
        assertThat(room.hidden()).as("%s at %s", state, screen).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void what_is_set_is_read_at_two_metres_and_what_is_read_near_is_not_small(Screen screen) {
        try (var room = RoomPage.open(SITE, screen, "r1")) {
            for (var asked : USUAL) {
                room.press("Escape").type(asked);
                assertThat(room.technique()).isVisible();
                assertThat(room.hidden()).as("%s at %s", asked, screen).isEmpty();
                assertThat(capitals(room.page(), ".fact .figure"))
                        .as("set, %s", asked)
                        .allMatch(px -> px >= LEGIBLE_PX);
                assertThat(capitals(room.page(), ".fact.main:not(.aec) .figure"))
                        .as("kV and mAs")
                        .allMatch(px -> px >= 1.5 * LEGIBLE_PX);
                assertThat((List<?>) room.page().evaluate(FONT_SIZES, ".placing dd"))
                        .isNotEmpty()
                        .allMatch(px -> ((Number) px).doubleValue() >= 20);
            }
        }
    }

    /** Each with cautions, and what differs: by AEC, by two adjustments at once, of a child with an added filter, after a new number. */
    @ParameterizedTest
    @EnumSource
    void nothing_of_an_answer_lies_under_head_or_foot(Screen screen) {
        try (var room = RoomPage.open(SITE, screen, "r1")) {
            room.type("cp22");
            room.button("Pleural effusion").click();
            sid(room, "195");
            assertInSight(room, screen, "aec-adjusted", 2);
            room.press("Escape").type("ka12.4");
            sid(room, "112");
            room.button("no grid").click();
            room.button("Wet plaster cast").click();
            room.button("Dry plaster cast").click();
            assertThat(room.page().locator(".with")).isVisible();
            assertInSight(room, screen, "two-adjustments", 1);
            room.type("13");
            assertThat(room.page().locator("#news")).containsText("As charted again.");
            assertInSight(room, screen, "as-charted-again", 0);
            room.press("Escape").type("chest ap neonate6");
            room.button("Pleural effusion").click();
            assertThat(room.page().locator(".filter")).hasText("Filter 1 mm Al + 0.1 mm Cu");
            assertInSight(room, screen, "filter", 0);
        }
    }

    private static void sid(RoomPage room, String cm) {
        room.page().locator("#sid").fill(cm);
        room.page().locator("#sid").blur();
        assertThat(room.set("SID " + cm + " cm")).hasText(cm + "cm");
    }

    private static void assertInSight(RoomPage room, Screen screen, String state, int cautions) {
        assertThat(room.technique()).isVisible();
        assertThat(room.page().locator(".cautions li")).hasCount(cautions);
        room.visit().picture("room-" + state + "-" + screen.name().toLowerCase(Locale.ROOT));
        assertThat(room.covered()).as("%s at %s", state, screen).isEmpty();
        assertThat(room.hidden()).as("%s at %s", state, screen).isEmpty();
        room.visit().assertAccessible();
    }

    private static final String FONT_SIZES =
            "(selector) => [...document.querySelectorAll(selector)].map((each) => parseFloat(getComputedStyle(each).fontSize))";

    /** The height of a capital in the type of each element, in pixels, as the browser draws it. */
    private static List<Double> capitals(Page page, String selector) {
        var measured = (List<?>) page.evaluate(
                """
                (selector) => [...document.querySelectorAll(selector)].map((each) => {
                  const pen = document.createElement('canvas').getContext('2d');
                  const { fontWeight, fontSize, fontFamily } = getComputedStyle(each);
                  pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
                  return pen.measureText('H').actualBoundingBoxAscent;
                })
                """,
                selector);
        assertThat(measured).isNotEmpty();
        return measured.stream().map(px -> ((Number) px).doubleValue()).toList();
    }

    @Test
    void smaller_type_and_cut_text_are_noticed() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            room.type("ka12");
            assertThat(room.technique()).isVisible();
            room.page().evaluate("document.documentElement.style.setProperty('--set', '60px')");
            assertThatThrownBy(() ->
                            assertThat(capitals(room.page(), ".fact .figure")).allMatch(px -> px >= LEGIBLE_PX))
                    .isInstanceOf(AssertionError.class);
            room.page().evaluate("document.documentElement.style.setProperty('--set', '120px')");
            assertThat(room.hidden()).isNotEmpty();
            room.page().evaluate("document.documentElement.style.setProperty('--main', '260px')");
            assertThat(room.covered()).isNotEmpty();
        }
    }

    /** The project's own limit: 300 KB packed, without the pack and plots. */
    @Test
    void the_page_weighs_under_three_hundred_kilobytes() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            @SuppressWarnings("unchecked")
            var files = (Map<String, Object>)
                    room.page()
                            .evaluate(
                                    """
                            Object.fromEntries([...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]
                              .filter((each) => !each.name.includes('/api/') && !each.name.startsWith('data:'))
                              .map((each) => [new URL(each.name).pathname, each.encodedBodySize]))
                            """);
            assertThat(files)
                    .containsKeys(
                            "/rooms/r1",
                            "/pages/base.css",
                            "/pages/room/room.js",
                            "/pages/room/answer.css",
                            "/pages/lit-html.js");
            assertThat(files.values()).allMatch(size -> ((Number) size).longValue() > 0);
            var bytes = files.values().stream()
                    .mapToLong(size -> ((Number) size).longValue())
                    .sum();
            System.out.println("Room page: " + files.size() + " files, " + bytes + " bytes packed");
            assertThat(bytes).isLessThan(300_000);
        }
    }

    /** README shows this picture; renew it by copying the new one from target/screens. */
    @Test
    void the_picture_in_the_readme_is_one_of_this_page() throws IOException {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            room.type("ka12.4");
            room.page().locator("#sid").fill("112");
            room.page().locator("#sid").blur();
            assertThat(room.set("SID 112 cm, chart 110 cm")).hasText("112cm");
            room.visit().picture("room-page");
        }
        var taken = ImageIO.read(Path.of("target", "screens", "room-page.png").toFile());
        assertThat(size(ImageIO.read(Path.of("src", "site", "room-page.png").toFile())))
                .isEqualTo(size(taken));
        assertThat(Path.of("README.md")).content().contains("src/site/room-page.png");
    }

    private static List<Integer> size(BufferedImage picture) {
        return List.of(picture.getWidth(), picture.getHeight());
    }
}
