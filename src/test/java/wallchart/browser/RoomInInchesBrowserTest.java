package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A department that measures in inches: shown and typed so, while the interface is asked in centimetres (1 in is 2.54 cm exactly). */
class RoomInInchesBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = DemoSite.inInches();

    @Test
    void lengths_are_shown_and_taken_in_inches() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r2")) {
            var asked = room.page().waitForRequest("**/technique?*thicknessCm=12.45*", () -> room.type("ka4.9"));
            // 4.9 in x 2.54 = 12.446 cm, to hundredths 12.45
            assertThat(asked.url()).contains("thicknessCm=12.45");
            assertThat(room.page().locator("#technique-title")).hasText("Technique for 4.9 in");
            assertThat(room.set("SID")).hasText("40in");
            assertThat(room.set("Receptor in, lengthwise")).hasText("9.4×11.8");
            assertThat(room.button("44 in")).isVisible();
            room.type("+");
            assertThat(room.thickness()).hasValue("5");
            assertThat(room.technique()).isVisible();
            assertThat(room.hidden()).isEmpty();
            room.visit().picture("room-inches");
            room.visit().assertClean();
        }
    }
}
