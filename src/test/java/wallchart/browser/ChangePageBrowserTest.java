package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The page of one change. */
class ChangePageBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @Test
    void looks() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/changes");
            assertThat(page.getByText("Waits for you")).isVisible();
            visit.picture("changes-radiographer");
            visit.open("/changes/5");
            assertThat(page.locator("#sheet td").first()).isVisible();
            page.getByLabel("Bring rows").fill("skull pa");
            page.locator("#sheet td[data-name=mAs]").first().click();
            page.keyboard().type("25");
            page.keyboard().press("Enter");
            page.keyboard().type("7,5");
            page.keyboard().press("Enter");
            assertThat(page.locator("#saving")).containsText("not taken");
            page.screenshot(new com.microsoft.playwright.Page.ScreenshotOptions()
                    .setFullPage(true)
                    .setPath(java.nio.file.Path.of("target/screens/change-radiographer.png")));
            visit.assertAccessible();
            visit.assertClean();
        }
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/changes/6");
            assertThat(page.getByText("Working out")).isHidden();
            assertThat(page.locator(".thread li").first()).isVisible();
            page.screenshot(new com.microsoft.playwright.Page.ScreenshotOptions()
                    .setFullPage(true)
                    .setPath(java.nio.file.Path.of("target/screens/change-lead.png")));
            visit.assertAccessible();
            visit.assertClean();
        }
    }
}
