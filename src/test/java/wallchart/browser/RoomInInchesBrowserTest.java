package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A department that measures in inches: shown and typed so, while the interface is asked in centimetres (1 in is 2.54 cm exactly). */
class RoomInInchesBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = DemoSite.inInches();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "no band holds 17 cm; nearest: 13-16 cm. | no band holds 6.7 in (17 cm); nearest: 5.1-6.3 in (13-16 cm).",
                "2 kV per cm x 0.9 cm | 2 kV per cm x 0.4 in (0.9 cm)",
                "mAs doubles per 5 cm: -0.9 cm is x 0.8827 | mAs doubles per 2 in (5 cm): -0.4 in (-0.9 cm) is x 0.8827",
                "outside the focal range of grid g10, 95 to 130 cm: | outside the focal range of grid g10, 37.4 to 51.2 in (95 to 130 cm):",
                "which allows 100, 112 or 183 cm | which allows 39.4, 44.1 or 72 in (100, 112 or 183 cm)",
                "300 cm2 and 12 cm^2 at 2 Gy cm2 | 300 cm2 and 12 cm^2 at 2 Gy cm2",
                "SID 112 cm instead of 110 cm: (112/110)^2 | SID 44.1 in (112 cm) instead of 43.3 in (110 cm): (112/110)^2",
            })
    void a_sentence_of_the_service_says_lengths_in_both_units(String told, String shown) {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/");
            var said = "async ([told, unit]) => (await import('/pages/words.js')).inUnit(told, unit)";
            assertThat(page.evaluate(said, List.of(told, "in"))).isEqualTo(shown);
            assertThat(page.evaluate(said, List.of(told, "cm"))).isEqualTo(told);
        }
    }

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
            room.press("?");
            assertThat(room.page().locator("#dialog")).containsText("SID 40 in (101.6 cm) as in the row");
            room.press("Escape").press("Escape");
            room.type("ka30");
            // 30 in is 76.2 cm; the thickest that can be asked for is 60 cm
            assertThat(room.refusal()).containsText("23.6 in (60 cm)");
            room.thickness().fill("9");
            assertThat(room.refusal()).containsText("no band holds 9 in (22.86 cm); nearest: ");
            room.visit().picture("room-inches-refusal");
            room.visit().assertClean();
        }
    }
}
