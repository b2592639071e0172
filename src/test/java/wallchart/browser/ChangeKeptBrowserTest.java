package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Nothing that an author types is lost, overwritten unseen, or sent by somebody else: whatever happens to network, session or service. */
class ChangeKeptBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String ROW = ChangeDesk.SKULL + "17-19";
    private static final String BAND = "17 to 19 cm";
    private static final String OTHER = ChangeDesk.SKULL + "19-21";

    private int change;

    private ChangeDesk opened(Visit visit) {
        var desk = new ChangeDesk(visit.open("/changes"));
        change = desk.open("r2", "Skulls, test of typing");
        return desk;
    }

    private static Visit author() {
        return SITE.visit(Screen.SMALL).as("radiographer");
    }

    private static void signIn(Page page, String name) {
        page.locator("body > dialog").getByLabel("Name").fill(name);
        page.locator("body > dialog").getByLabel("Password").fill("demo-" + name);
        page.locator("body > dialog button.first").click();
    }

    @Test
    void what_is_typed_while_the_connection_is_down_is_saved_when_it_is_back() {
        try (var visit = author()) {
            var desk = opened(visit);
            var sheet = SheetOfRows.of(visit.page(), change, "skull pa");
            visit.context().setOffline(true);
            sheet.enter(BAND, "mAs", "25");
            sheet.enter(BAND, "kV", "74");
            sheet.assertSays("not yet saved: the service cannot be reached");
            assertThat(sheet.line(BAND)).containsText("not yet saved");
            visit.assertAccessible();
            visit.context().setOffline(false);
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            assertThat(desk.has(change, ROW, "kV")).contains("74");
            visit.assertClean();
        }
    }

    @Test
    void a_session_that_ends_while_somebody_types_is_renewed_in_place() {
        try (var visit = author()) {
            var desk = opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            visit.context().clearCookies();
            sheet.enter(BAND, "mAs", "25");
            assertThat(page.getByText("Your session is over")).isVisible();
            signIn(page, "radiographer");
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            assertThat(sheet.cell(BAND, "mAs")).containsText("25");
            visit.assertClean();
        }
    }

    @Test
    void another_person_who_signs_in_sends_nothing_of_it() {
        try (var visit = author()) {
            var desk = opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            visit.context().clearCookies();
            var written = new AtomicReference<String>();
            page.onRequest(request -> {
                if (request.method().equals("PUT")) {
                    written.set(request.url());
                }
            });
            sheet.enter(BAND, "mAs", "25");
            assertThat(page.getByText("Your session is over")).isVisible();
            assertThat(written.getAndSet(null))
                    .as("the write that met the end of the session")
                    .isNotNull();
            signIn(page, "lead");
            assertThat(page.getByText("sent for nobody else")).isVisible();
            assertThat(page.locator("#sheet")).hasCount(0);
            assertThat(written.get()).as("a write under the other name").isNull();
            assertThat(desk.edits(change)).isEmpty();
            visit.assertAccessible();

            visit.as("radiographer");
            page.navigate("/changes/" + change);
            assertThat(page.getByText("From before.")).isVisible();
            visit.assertAccessible();
            page.getByText("Save it now").click();
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            visit.assertClean();
        }
    }

    @Test
    void what_is_typed_while_the_service_is_down_is_saved_when_it_runs_again() {
        try (var visit = author()) {
            var desk = opened(visit);
            var sheet = SheetOfRows.of(visit.page(), change, "skull pa");
            SITE.stop();
            sheet.enter(BAND, "mAs", "25");
            sheet.assertSays("cannot be reached");
            SITE.startAgain();
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            visit.assertClean();
        }
    }

    /** The service goes with some rows written, one under way and the others waiting; the session is over when it is back. */
    @Test
    void a_block_of_forty_rows_outlives_the_service_and_the_session() {
        try (var visit = author()) {
            var desk = opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "adult table");
            var answered = new AtomicInteger();
            page.onResponse(response -> {
                if (response.request().method().equals("PUT") && response.ok() && answered.incrementAndGet() == 5) {
                    visit.context().setOffline(true);
                }
            });
            pasteForty(visit);
            sheet.assertSays("cannot be reached");
            SITE.stop();
            visit.context().clearCookies();
            visit.context().setOffline(false);
            SITE.startAgain();
            assertThat(page.getByText("Your session is over")).isVisible();
            signIn(page, "radiographer");
            sheet.assertSaved();
            assertThat(desk.edits(change)).hasSize(40);
            assertThat(page.locator("#sheet td[data-name=notes]").nth(39)).containsText("line 39");
            page.reload();
            assertThat(page.getByText("From before.")).hasCount(0);
            assertThat(page.locator("#sheet td[data-name=notes]").nth(39)).containsText("line 39");
            visit.assertClean();
        }
    }

    private static void pasteForty(Visit visit) {
        var page = visit.page();
        visit.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        page.locator("#sheet td[data-name=notes]").first().click();
        var lines = IntStream.range(0, 40).mapToObj(i -> "line " + i).toList();
        page.evaluate("(text) => navigator.clipboard.writeText(text)", String.join("\n", lines));
        page.keyboard().press("Control+v");
    }

    /** The page goes with some rows confirmed, one written whose answer never came, and the others waiting. */
    @Test
    void a_block_that_a_closed_window_cut_off_is_offered_and_goes_on_where_it_stopped() {
        try (var visit = author()) {
            opened(visit);
            var page = visit.page();
            SheetOfRows.of(page, change, "adult table");
            var asked = new AtomicInteger();
            visit.context().route("**/rows/**", route -> {
                if (!route.request().method().equals("PUT") || asked.incrementAndGet() < 6) {
                    route.resume();
                } else if (asked.get() == 6) {
                    route.fetch(); // written, and nobody hears of it
                    route.abort();
                } else {
                    route.abort();
                }
            });
            pasteForty(visit);
            new SheetOfRows(page).assertSays("cannot be reached");
            page.close();
            visit.context().unroute("**/rows/**");
            var again = visit.another();
            again.navigate("/changes/" + change);
            assertThat(again.getByText("From before.")).isVisible();
            again.getByText("Save it now").click();
            new SheetOfRows(again).assertSaved();
            assertThat(again.getByText("Written in between.")).hasCount(0);
            assertThat(new ChangeDesk(again).edits(change)).hasSize(40);
            visit.assertClean();
        }
    }

    @Test
    void what_was_not_sent_when_the_page_closed_is_offered_when_it_comes_back() {
        try (var visit = author()) {
            var desk = opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            var warned = new AtomicReference<>("");
            page.onDialog(dialog -> {
                warned.set(dialog.type());
                dialog.accept();
            });
            visit.context().route("**/rows/**", Route::abort);
            sheet.enter(BAND, "mAs", "25");
            sheet.cell(BAND, "kV").click();
            page.keyboard().type("7");
            sheet.assertSays("cannot be reached");
            visit.context().unroute("**/rows/**");
            page.reload();
            assertThat(warned.get()).isEqualTo("beforeunload");
            assertThat(page.getByText("From before.")).isVisible();
            assertThat(sheet.cell(BAND, "mAs")).containsText("25");
            assertThat(desk.edits(change)).as("nothing is sent unasked").isEmpty();
            page.getByText("Save it now").click();
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            assertThat(desk.has(change, ROW, "kV"))
                    .as("the cell that was still being typed in")
                    .contains("7");
            visit.assertClean();
        }
    }

    @Test
    void a_write_whose_answer_was_lost_is_not_written_twice() {
        try (var visit = author()) {
            var desk = opened(visit);
            var sheet = SheetOfRows.of(visit.page(), change, "skull pa");
            visit.context().route("**/rows/**", route -> {
                route.fetch();
                route.abort();
            });
            sheet.enter(BAND, "mAs", "25");
            sheet.assertSays("cannot be reached");
            assertThat(desk.has(change, ROW, "mAs")).contains("25");
            visit.context().unroute("**/rows/**");
            sheet.assertSaved();
            assertThat(sheet.line(BAND)).containsText("saved");
            assertThat(visit.page().locator(".beside").filter(new Locator.FilterOptions().setHasText("in between")))
                    .hasCount(0);
            visit.assertClean();
        }
    }

    @Test
    void what_another_window_wrote_in_between_is_shown_and_the_author_chooses() {
        try (var visit = author()) {
            var desk = opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            desk.write(change, "r2", ROW, "mAs", 30);
            desk.write(change, "r2", OTHER, "mAs", 30);
            sheet.enter(BAND, "kV", "74");
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs"))
                    .as("what the other window wrote")
                    .contains("30");
            assertThat(desk.has(change, ROW, "kV")).contains("74");

            desk.write(change, "r2", ROW, "mAs", 40);
            sheet.enter(BAND, "mAs", "25");
            assertThat(page.locator(".beside").first()).containsText("you typed “25”, by now there stands “40”");
            assertThat(desk.has(change, ROW, "mAs")).contains("40");
            visit.assertAccessible();
            page.getByText("Take mine, 25").click();
            sheet.assertSaved();
            assertThat(desk.has(change, ROW, "mAs")).contains("25");

            desk.write(change, "r2", ROW, "mAs", 50);
            sheet.enter(BAND, "mAs", "20");
            page.getByText("Leave 50").click();
            sheet.assertSaved();
            assertThat(sheet.cell(BAND, "mAs")).containsText("50");
            assertThat(desk.has(change, ROW, "mAs")).contains("50");
            visit.assertClean();
        }
    }

    @Test
    void what_is_typed_leaves_this_browser_only_when_the_service_has_it() {
        try (var visit = author()) {
            opened(visit);
            var page = visit.page();
            var sheet = SheetOfRows.of(page, change, "skull pa");
            visit.context().route("**/rows/**", Route::abort);
            sheet.cell(BAND, "mAs").click();
            page.keyboard().type("2");
            assertThat(kept(page)).as("a cell that is still open").containsPattern("\"mAs\":\"2\"");
            page.keyboard().type("5");
            page.keyboard().press("Escape");
            assertThat(kept(page)).as("broken off").isEmpty();
            sheet.enter(BAND, "mAs", "25");
            assertThat(kept(page)).contains(ROW).contains("\"mAs\":\"25\"");
            sheet.assertSays("cannot be reached");
            visit.context().unroute("**/rows/**");
            page.getByText("Try now").click();
            sheet.assertSaved();
            assertThat(kept(page)).isEmpty();
            visit.assertClean();
        }
    }

    /** What this browser keeps of rows, as text. */
    private static String kept(Page page) {
        return (String) page.evaluate(
                "Object.entries(localStorage).filter(([name]) => name.startsWith('wallchart.unsent')).join()");
    }
}
