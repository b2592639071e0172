package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static wallchart.browser.Find.button;
import static wallchart.browser.Find.byTabulator;
import static wallchart.browser.Find.heading;
import static wallchart.browser.Find.lookAt;
import static wallchart.browser.Find.text;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ledger as a lead radiographer or a medical physicist looks at it. */
class AuditPageBrowserTest {

    private static final String PAST =
            "/audit#view=past&room=r1&bodyPart=KNEE&projection=ap&support=table-bucky&thickness=12.4";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @ParameterizedTest
    @EnumSource
    void each_part_is_accessible_in_both_themes(Screen screen) {
        try (var visit = SITE.visit(screen).as("physicist")) {
            var page = visit.open("/audit");
            lookAt(visit, "audit-line", screen, text(page, "Sound."));
            visit.open("/audit#event=21");
            lookAt(visit, "audit-event", screen, page.getByText("Amended rows").first());
            visit.open("/audit#event=23");
            lookAt(
                    visit,
                    "audit-equipment",
                    screen,
                    page.getByText("Fields that differ").first());
            visit.open(PAST);
            lookAt(visit, "audit-past", screen, page.getByText("It would have been told"));
            visit.open("/audit#view=reviews");
            lookAt(visit, "audit-reviews", screen, heading(page, "Earlier reviews"));
            visit.assertClean();
        }
    }

    @Test
    void the_time_line_goes_back_page_by_page_and_the_focus_goes_on_with_it() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit");
            assertThat(page.locator(".timeline ol li")).hasCount(50);
            assertThat(page.locator(".timeline ol li").first()).containsText("issued room token 3 of Mobile unit 3");
            button(page, "Older events").click();
            assertThat(page.getByText("added the account of Wren Alderby (lead)"))
                    .isVisible();
            assertThat(page.locator(".timeline ol li").nth(50).locator("a")).isFocused();
            assertThat(button(page, "Older events")).hasCount(0);
        }
    }

    @Test
    void each_filter_narrows_the_line_and_stands_in_the_address() {
        try (var visit = SITE.visit(Screen.WIDE).as("lead")) {
            var page = visit.open("/audit");
            page.locator("select[name=room]").selectOption("r2");
            page.getByLabel("Person").fill("lead");
            page.locator("select[name=action]").selectOption("version-signed");
            button(page, "Show").click();
            assertThat(page.locator(".timeline ol li")).hasCount(4);
            assertThat(page.locator(".timeline ol li").first()).containsText("Wren Alderby signed version 4 of Room 2");
            assertThat(page).hasURL(Pattern.compile("#room=r2&actor=lead&action=version-signed$"));
            page.reload();
            assertThat(page.locator(".timeline ol li")).hasCount(4);
            assertThat(page.locator("select[name=action]")).hasValue("version-signed");
            button(page, "Show all").click();
            assertThat(page.locator(".timeline ol li")).hasCount(50);
            assertThat(page.getByLabel("Person")).hasValue("");
        }
    }

    @Test
    void a_period_in_days_takes_both_ends_in() {
        try (var visit = SITE.visit(Screen.WIDE).as("lead")) {
            var page = visit.open("/audit#action=change-declined");
            var at = page.locator(".timeline ol li time").first().getAttribute("datetime");
            var day = at.substring(0, 10); // the browser of the tests keeps UTC
            page.getByLabel("From the day").fill(day);
            page.getByLabel("To the day, included").fill(day);
            button(page, "Show").click();
            assertThat(page).hasURL(Pattern.compile("from=" + day + "&to=" + day));
            assertThat(page.locator(".timeline ol li")).hasCount(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"#actor=a%27b", "#action=Version", "#room=R+1"})
    void a_filter_that_the_interface_refuses_is_said_and_nothing_is_shown_under_it(String address) {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit" + address);
            assertThat(page.getByText("That did not work.")).isVisible();
            assertThat(page.locator(".timeline ol li")).hasCount(0);
            visit.assertClean();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"999999", "0", "x", "%3Cb%3E"})
    void an_event_that_is_not_there_is_said(String seq) {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit#event=" + seq);
            assertThat(page.getByText("That did not work.")).isVisible();
            visit.assertClean();
        }
    }

    @Test
    void an_action_that_this_page_does_not_know_is_shown_by_its_own_name() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            visit.page().route("**/audit/events?*", route -> {
                var answer = route.fetch();
                route.fulfill(new com.microsoft.playwright.Route.FulfillOptions()
                        .setResponse(answer)
                        .setBody(answer.text().replace("room-token-issued", "kettle-descaled")));
            });
            var page = visit.open("/audit");
            assertThat(page.locator(".timeline ol li").first())
                    .containsText("kettle descaled: room-token/3 of Mobile unit 3 (kettle-descaled)");
        }
    }

    @Test
    void by_keyboard_alone_one_reads_an_event_its_neighbour_and_what_the_room_was_told() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/audit#room=r2&action=version-signed");
            assertThat(page.locator(".timeline ol li")).hasCount(4);
            page.locator(".timeline ol li a").nth(1).focus();
            page.keyboard().press("Enter");
            assertThat(heading(page, "Event 21")).isFocused();
            assertThat(page.getByText("Its hash fits")).isVisible();
            assertThat(page.getByText("2 rows amended, 0 added, 0 withdrawn")).isVisible();
            byTabulator(page, "Event 20, before it");
            page.keyboard().press("Enter");
            assertThat(heading(page, "Event 20")).isFocused();
            page.goBack();
            assertThat(heading(page, "Event 21")).isFocused();
            byTabulator(page, "What was Room 2 told from then on?");
            page.keyboard().press("Enter");
            page.getByLabel("Body part").focus();
            page.keyboard().type("Knee");
            page.keyboard().press("Tab");
            page.keyboard().type("AP");
            page.getByLabel("Thickness, cm").focus();
            page.keyboard().type("11.5");
            page.keyboard().press("Tab");
            page.keyboard().type("table b");
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            assertThat(heading(page, "It would have been told")).isFocused();
            assertThat(page.getByText("version 3 of Room 2")).isVisible();
            visit.assertClean();
        }
    }
}
