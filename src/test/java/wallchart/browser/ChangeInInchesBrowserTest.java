package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A change in a department that measures in inches (1 in is 2.54 cm exactly): what is sent are the very sizes of the receptors. */
class ChangeInInchesBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = DemoSite.inInches();

    @Test
    void fields_are_shown_and_typed_in_inches_and_kept_in_exact_centimetres() {
        try (var visit = SITE.visit(Screen.WIDE).as("radiographer")) {
            var desk = new ChangeDesk(visit.open("/changes"));
            int change = desk.open("r2", "Skulls in inches");
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            page.locator("summary", new Page.LocatorOptions().setHasText("Columns"))
                    .click();
            page.getByLabel("Receptor").check();
            var first = page.locator("#sheet td[data-name=fieldCm]").first();
            assertThat(first).hasText("9.4x11.8"); // 24 x 30 cm
            first.click();
            page.keyboard().type("13.8 x 16.9"); // 35 x 43 cm: 13.78 and 16.93 in
            page.keyboard().press("Enter");
            sheet.assertSaved();
            assertThat(desk.edits(change)).hasSize(1);
            var row = desk.edits(change).get(0).replace("amend ", "");
            assertThat(desk.has(change, row, "fieldCm")).contains("35x43");
            assertThat(first).containsText("13.8x16.9");
            assertThat(page.locator(".impact")).containsText("Field: 9.4x11.8 in");
            visit.assertClean();
        }
    }
}
