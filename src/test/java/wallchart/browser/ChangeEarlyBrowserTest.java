package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Room r1 of the demo has a version that waits for its day, by which shoulders go a step lower: what a change on top of it says. */
class ChangeEarlyBrowserTest {

    private static final String SHOULDERS = "Shoulder";
    private static final String BROUGHT = "Come into force with it, earlier than signed";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static int submittedNote(String row, String note) {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var desk = new ChangeDesk(visit.open("/changes"));
            int change = desk.open("r1", note);
            desk.write(change, "r1", row, "notes", note);
            desk.step(change, "submit");
            return change;
        }
    }

    private static Locator table(Page page, String caption) {
        return page.locator("table.impact").filter(new Locator.FilterOptions().setHasText(caption));
    }

    private static Locator signature(Page page) {
        return page.locator("form.panel").filter(new Locator.FilterOptions().setHasText("Sign the change"));
    }

    private static void sign(Page page, LocalDateTime from) {
        var form = signature(page);
        form.getByLabel("What your signature states").fill("Approved for use in this room");
        form.getByLabel("In force from")
                .fill(from == null ? "" : from.format(DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm")));
        form.getByLabel("Your password again").fill("demo-lead");
        form.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Sign"))
                .click();
    }

    @Test
    void what_comes_into_force_earlier_than_signed_is_seen_concurred_with_and_signed() {
        int change = submittedNote("FOREARM/ap/adult/tabletop/4-6", "Both joints");
        looksRightEverywhere(change);
        try (var lead = SITE.visit(Screen.SMALL).as("lead");
                var physicist = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = lead.open("/changes");
            assertThat(page.getByLabel("Waits for you"))
                    .containsText("for a start at once, for a medical physicist first");
            lead.open("/changes/" + change);
            assertThat(table(page, BROUGHT).locator("tbody tr")).hasCount(3);
            assertThat(table(page, BROUGHT)).containsText(SHOULDERS);
            assertThat(table(page, "Its own rows against version 2").locator("tbody tr"))
                    .hasCount(1);
            assertThat(table(page, "Rows against version 3").locator("tbody tr"))
                    .hasCount(1);
            assertThat(signature(page)).containsText("a medical physicist has to concur first");
            sign(page, null);
            assertThat(signature(page).getByLabel("In force from")).isFocused(); // it asks for a start
            sign(page, LocalDateTime.now().plusDays(1));
            assertThat(page.locator("#trouble")).containsText("physicist");
            lead.assertAccessible();

            var second = physicist.open("/changes/" + change);
            var concur = second.locator("form.panel").filter(new Locator.FilterOptions().setHasText("Concur with"));
            concur.getByLabel("Your password again").fill("demo-physicist");
            concur.getByRole(AriaRole.BUTTON).click();
            assertThat(second.locator("#said")).containsText("Your concurrence is recorded.");

            lead.open("/changes/" + change);
            assertThat(signature(page)).containsText("The start decides.");
            sign(page, null);
            assertThat(page.locator("#said")).containsText("Signed.");
            assertThat(table(page, BROUGHT).locator("tbody tr")).hasCount(3);
            lead.open("/charts/r1#version=3");
            assertThat(page.locator(".head .mark")).hasText("never in force");
            assertThat(page.locator(".head .tell").first())
                    .containsText("never answers: a later one, made on top of it, starts sooner");
            lead.assertAccessible();
            lead.picture("chart-never-in-force");
            lead.assertClean();
            physicist.assertClean();
        }
    }

    private static void looksRightEverywhere(int change) {
        for (var screen : Screen.values()) {
            try (var visit = SITE.visit(screen).as("lead")) {
                var page = visit.open("/changes/" + change);
                assertThat(table(page, BROUGHT)).isVisible();
                visit.assertAccessible();
                visit.picture("change-early-" + screen.name().toLowerCase(Locale.ROOT));
                page.getByText("Dim").click();
                visit.assertAccessible();
                visit.assertClean();
            }
        }
    }
}
