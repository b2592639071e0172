package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

/** The table of rows of a change, as somebody at the keyboard uses it. */
final class SheetOfRows {

    private final Page page;

    SheetOfRows(Page page) {
        this.page = page;
    }

    /** The page of a change whose author is at the screen, with some rows of the chart brought in. */
    static SheetOfRows of(Page page, int change, String words) {
        page.navigate("/changes/" + change);
        return new SheetOfRows(page).bring(words);
    }

    SheetOfRows bring(String words) {
        page.getByLabel("Bring rows").fill(words);
        assertThat(page.locator("#sheet td[data-name=mAs]").first()).isVisible();
        return this;
    }

    /** The line of the row whose words contain these, such as "17 to 19 cm". */
    Locator line(String words) {
        return page.locator("#sheet tbody tr:not(.beside)")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("th").filter(new Locator.FilterOptions().setHasText(words))));
    }

    Locator cell(String row, String field) {
        return line(row).locator("td[data-name=" + field + "]");
    }

    /** Goes to a cell, types and enters. */
    void enter(String row, String field, String text) {
        cell(row, field).click();
        page.keyboard().type(text);
        page.keyboard().press("Enter");
    }

    void assertSaved() {
        assertThat(page.locator("#saving")).hasText("Everything that is entered is saved.");
    }

    void assertSays(String words) {
        assertThat(page.locator("#saving")).containsText(words);
    }
}
