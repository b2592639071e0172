package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.browser.Find.button;
import static wallchart.browser.Find.lookAt;
import static wallchart.browser.Find.text;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A page belongs to who opened it: whoever signs in at another window of the same browser neither sends nor sees what was typed there. */
class OwnPageBrowserTest {

    private static final String BAND = "17 to 19 cm";
    private static final String STRANGER = "Somebody else signed in at this browser";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static void signIn(Page page, String name) {
        page.locator("body > dialog").getByLabel("Name").fill(name);
        page.locator("body > dialog").getByLabel("Password").fill("demo-" + name);
        page.locator("body > dialog button.first").click();
        assertThat(page.locator("body > dialog")).isHidden();
    }

    /** Another window of the same browser, where somebody signs out and another one in. */
    private static Page another(Visit visit, String name) {
        var window = visit.another();
        window.navigate("/changes");
        button(window, "Sign out").click();
        button(window, "Sign in").click();
        signIn(window, name);
        return window;
    }

    /** What the page writes from now on, by method and address. */
    private static List<String> writes(Page page) {
        var sent = new CopyOnWriteArrayList<String>();
        page.onRequest(request -> {
            if (!request.method().equals("GET") && !request.url().endsWith("/session")) {
                sent.add(line(request));
            }
        });
        return sent;
    }

    private static String line(Request request) {
        return request.method() + " " + request.url();
    }

    /** The demo has one medical physicist; this one signs in as if there were two. */
    private static void asAnotherPhysicist(Route route) {
        var answer = route.fetch();
        route.fulfill(new Route.FulfillOptions()
                .setResponse(answer)
                .setBody(answer.text().replaceFirst("\"personId\":(\\d+)", "\"personId\":9$1")));
    }

    @Test
    void an_edit_waits_for_its_author_while_another_person_is_signed_in_at_another_window() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var desk = new ChangeDesk(visit.open("/changes"));
            int change = desk.open("r2", "Skulls, test of two windows");
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            var sent = writes(page);
            another(visit, "lead");
            assertThat(page.getByText(STRANGER)).isVisible();
            sheet.enter(BAND, "mAs", "25");
            sheet.assertSays("not yet saved: somebody else is signed in");
            assertThat(page.locator("#saving.caution")).isVisible();
            assertThat(sent).isEmpty();
            lookAt(visit, "own-page", Screen.SMALL, page.getByText(STRANGER));

            button(page, "Sign in again as yourself").click();
            signIn(page, "radiographer");
            sheet.assertSaved();
            assertThat(page.getByText(STRANGER)).hasCount(0);
            assertThat(desk.has(change, ChangeDesk.SKULL + "17-19", "mAs")).contains("25");
            visit.assertClean();
        }
    }

    @Test
    void nobody_signs_with_the_page_of_another_not_even_where_this_browser_told_it_nothing() {
        int change;
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var desk = new ChangeDesk(visit.open("/changes"));
            change = desk.open("r3", "Signature at two windows");
            desk.write(change, "r3", "WRIST/pa/adult/tabletop/3-5", "notes", "Both wrists on one image");
            desk.step(change, "submit");
        }
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/changes/" + change);
            var form = page.locator("form.panel").filter(new Locator.FilterOptions().setHasText("Sign the change"));
            form.getByLabel("What your signature states").fill("Approved for use in this room");
            form.getByLabel("Your password again").fill("demo-lead");
            visit.as("physicist"); // the session of the browser is another one, and its storage still says the lead's
            button(page, "Sign").click();
            assertThat(page.locator("#trouble")).containsText("what you typed was not sent; sign in again as yourself");
            assertThat(page.getByText(STRANGER)).isVisible();
            assertThat(form.getByLabel("What your signature states")).hasValue("Approved for use in this room");
            button(page, "Sign in again as yourself").click();
            signIn(page, "lead");
            form.getByLabel("Your password again").fill("demo-lead");
            button(page, "Sign").click();
            assertThat(page.locator("#said")).containsText("Signed.");
            visit.assertClean();
        }
    }

    /** The session ends between the pages; an act of two requests must not begin as one person and end as another. */
    @Test
    void a_change_that_one_person_wrote_is_not_opened_by_the_one_who_signs_in_for_it() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/changes");
            page.getByText("New change", new Page.GetByTextOptions().setExact(true))
                    .click();
            var form = page.locator("details[open] form");
            form.getByLabel("Title").fill("Skulls with less");
            form.getByLabel("Reason").fill("Exposure index above target for eight weeks");
            var sent = writes(page);
            visit.context().clearCookies();
            form.locator("button.first").click();
            signIn(page, "physicist");
            assertThat(page.getByText("was not sent under your name")).isVisible();
            assertThat(sent).isEmpty();
        }
    }

    @Test
    void a_sheet_that_one_person_asked_for_is_not_printed_in_the_name_of_the_one_who_signs_in_for_it() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/sheets");
            assertThat(page.locator("#pages strong")).isVisible();
            visit.context().clearCookies();
            page.locator(".panel button.first").click();
            signIn(page, "physicist");
            assertThat(page.getByText("was not sent under your name")).isVisible();
            assertThat(page.getByText("No sheet was printed yet.")).isVisible();
        }
    }

    @Test
    void who_could_not_be_signed_out_is_told_so() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/changes");
            page.route("**/api/v1/session", Route::abort);
            button(page, "Sign out").click();
            assertThat(page.getByText("You are still signed in.")).isVisible();
            visit.assertAccessible();
            page.unroute("**/api/v1/session");
            page.locator(".whose").getByText("Sign out").click();
            assertThat(button(page, "Sign in")).isVisible();
        }
    }

    @Test
    void a_review_of_the_ledger_is_neither_recorded_under_another_name_nor_seen_by_the_next_person() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/audit#view=reviews");
            page.getByLabel("Looked at from the day").fill("2026-09-01");
            page.getByLabel("To the day, included").fill("2026-09-30");
            page.getByLabel("What you found").fill("Nothing to be remarked");
            var sent = writes(page);
            another(visit, "lead");
            button(page, "Record the review").click();
            assertThat(page.locator("#review-outcome")).containsText("what you typed was not sent");
            assertThat(sent).isEmpty();
            assertThat(page.getByLabel("What you found")).hasValue("Nothing to be remarked");

            button(page, "Sign in again as yourself").click();
            page.route("**/api/v1/session", OwnPageBrowserTest::asAnotherPhysicist);
            signIn(page, "physicist");
            assertThat(page.getByLabel("What you found")).hasValue("");
            assertThat(page.locator("#review-outcome")).hasText("");
            page.unroute("**/api/v1/session");
            visit.context().clearCookies();
            button(page, "Verify now").click();
            signIn(page, "physicist");
            assertThat(page.getByLabel("What you found")).hasValue("Nothing to be remarked");
            visit.assertClean();
        }
    }

    @Test
    void a_measurement_is_neither_tried_under_another_name_nor_seen_by_the_next_person() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/equipment/r1#view=measure");
            page.getByLabel("Measured on").fill("2026-10-21");
            var sent = writes(page);
            another(visit, "lead");
            button(page, "Try it").click();
            assertThat(page.locator("#outcome")).containsText("what you typed was not sent");
            assertThat(sent).isEmpty();
            assertThat(page.getByLabel("Measured on")).hasValue("2026-10-21");

            button(page, "Sign in again as yourself").click();
            signIn(page, "physicist");
            visit.context().clearCookies();
            button(page, "Try it").click();
            signIn(page, "lead");
            assertThat(text(page, "Not sent.")).isVisible();
            assertThat(page.getByLabel("Measured on")).hasValue("");
            visit.assertAccessible();
            visit.as("physicist");
            page.reload();
            assertThat(page.getByLabel("Measured on")).hasValue("2026-10-21");
            visit.assertClean();
        }
    }
}
