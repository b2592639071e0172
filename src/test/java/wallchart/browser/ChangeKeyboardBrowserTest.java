package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A change is proposed, handed in and signed by people who have no mouse. */
class ChangeKeyboardBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String TITLE = "Both joints on infants' forearms";

    /** Presses Tab until the focus is there. */
    private static void tabTo(Page page, Locator wanted) {
        assertThat(wanted).isVisible();
        for (int i = 0; i < 150; i++) {
            if ((Boolean) wanted.evaluate("(element) => element === document.activeElement")) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("no Tab leads to " + wanted);
    }

    private static void type(Page page, Locator field, String text) {
        tabTo(page, field);
        page.keyboard().type(text);
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @Test
    void a_change_is_proposed_handed_in_and_signed_without_a_mouse() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            proposed(visit.open("/changes"));
            visit.assertClean();
        }
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            signed(visit.open("/changes"));
            visit.assertClean();
        }
    }

    private static void proposed(Page page) {
        tabTo(page, page.locator("summary").filter(new Locator.FilterOptions().setHasText("New change")));
        page.keyboard().press("Enter");
        var form = page.locator("form").filter(new Locator.FilterOptions().setHasText("Open the change"));
        tabTo(page, form.getByLabel("Room"));
        page.keyboard().press("ArrowDown");
        page.keyboard().press("ArrowDown");
        assertThat(form.getByLabel("Room")).hasValue("r3");
        type(page, form.getByLabel("Title"), TITLE);
        type(page, form.getByLabel("Reason"), "Wrist or elbow was cut off twice this month");
        tabTo(page, button(page, "Open the change"));
        page.keyboard().press("Enter");
        page.waitForURL("**/changes/*");

        type(page, page.locator("#find"), "forearm ap infant");
        tabTo(page, page.locator("#sheet td[tabindex='0']"));
        page.keyboard().press("End");
        page.keyboard().type("Both joints on one image");
        page.keyboard().press("Enter");
        new SheetOfRows(page).assertSaved();
        assertThat(button(page, "Hand in for signature")).isEnabled();
        page.keyboard().press("Escape");
        tabTo(page, button(page, "Hand in for signature"));
        page.keyboard().press("Enter");
        assertThat(page.locator("#said")).containsText("Handed in.");
        assertThat(page.locator("#said")).isFocused();
    }

    private static void signed(Page page) {
        tabTo(page, page.getByLabel("Waits for you").getByText(TITLE));
        page.keyboard().press("Enter");
        page.waitForURL("**/changes/*");
        assertThat(button(page, "Sign")).isEnabled();
        var form = page.locator("form.panel").filter(new Locator.FilterOptions().setHasText("Sign the change"));
        type(page, form.getByLabel("What your signature states"), "Approved for use in this room");
        type(page, form.getByLabel("Your password again"), "demo-lead");
        page.keyboard().press("Enter");
        assertThat(page.locator("#said")).containsText("Signed.");
        assertThat(page.locator("#said")).isFocused();
    }
}
