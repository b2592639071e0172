package wallchart.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.LoadState;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Somebody who is signed in opens an address that somebody else made up: it asks the service for nothing but what its page shows. */
class ForgedAddressBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/rooms/r1%2Fsheet.pdf%3Fpaper=letter%26rest=",
                "/rooms/r1%2Fsheet.pdf",
                "/audit#view=past&room=r1/sheet.pdf?paper=a4%26rest=&bodyPart=KNEE&projection=ap&thickness=12",
                "/audit#view=past&room=r1/sheet.pdf",
                "/changes#room=r1/../../rooms/r1/sheet.pdf?paper=a4%26rest=",
                "/equipment/r1%2Fsheet.pdf",
                "/charts/r1%2F..%2F..%2Frooms%2Fr1%2Fsheet.pdf%3F",
                "/sheets#room=r1/sheet.pdf?paper=a4%26rest=",
            })
    void no_address_of_a_page_prints_a_sheet_for_whoever_is_signed_in(String address) {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/rooms/r1");
            page.evaluate("async () => (await import('/pages/room/install.js')).whenInstalled");
            visit.open(address);
            page.waitForLoadState(LoadState.NETWORKIDLE);
            var register = visit.context().request().get("/api/v1/sheets").text();
            assertThat(register).contains("\"sheets\":[]");
        }
    }
}
