package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static wallchart.browser.Find.button;
import static wallchart.browser.Find.heading;
import static wallchart.browser.Find.text;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a room was told on a past day, reviews and export, and who may read the ledger at all. */
class AuditPastBrowserTest {

    private static final String PAST =
            "/audit#view=past&room=r1&bodyPart=KNEE&projection=ap&support=table-bucky&thickness=12.4";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @Test
    void the_second_of_an_event_is_its_own_exact_instant_not_the_second_before() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit#event=21");
            page.getByText("What was Room 2 told from then on?").click();
            page.getByLabel("Body part").selectOption("KNEE");
            page.getByLabel("Projection").selectOption("ap");
            page.getByLabel("Thickness, cm").fill("11.5");
            page.getByLabel("Support").selectOption("table-bucky");
            button(page, "Ask").click();
            assertThat(page.getByText("version 3 of Room 2")).isVisible();
        }
    }

    @Test
    void what_the_chart_has_not_is_refused_in_words_and_what_it_has_is_a_click_away() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open(PAST.replace("&support=table-bucky", ""));
            assertThat(heading(page, "It would have been refused")).isVisible();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("table bucky"))
                    .click();
            assertThat(heading(page, "It would have been told")).isVisible();
            visit.open(PAST.replace("12.4", "40"));
            assertThat(page.getByText("No band of the chart holds this thickness."))
                    .isVisible();
            visit.open(PAST + "&at=2020-01-01T00:00:00Z");
            assertThat(page.getByText("No chart is in force.")).isVisible();
            visit.assertAccessible();
            visit.assertClean();
        }
    }

    @Test
    void a_review_is_recorded_by_a_physicist_and_what_was_typed_survives_a_refusal_and_a_reload() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/audit#view=reviews");
            page.getByLabel("Looked at from the day").fill("2026-10-31");
            page.getByLabel("To the day, included").fill("2026-10-01");
            page.getByLabel("What you found").fill("All signatures by the lead,\n nothing to remark.\n");
            button(page, "Record the review").click();
            assertThat(page.getByText("the period ends before it begins").first())
                    .isVisible();
            page.reload();
            assertThat(page.getByLabel("What you found"))
                    .hasValue("All signatures by the lead,\n nothing to remark.\n");
            page.getByLabel("To the day, included").fill("2026-11-30");
            button(page, "Record the review").click();
            assertThat(text(page, "Recorded")).isVisible();
            assertThat(page.getByLabel("What you found")).hasValue("");
            assertThat(page.locator("blockquote").first()).hasText("All signatures by the lead, nothing to remark.");
            visit.assertAccessible();
        }
    }

    @Test
    void a_lead_reads_reviews_and_records_none() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit#view=reviews");
            assertThat(page.getByText("Medical physicists record")).isVisible();
            assertThat(button(page, "Record the review")).hasCount(0);
        }
    }

    @Test
    void the_export_is_saved_with_a_line_for_each_event() throws java.io.IOException {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit#view=reviews");
            var saved = page.waitForDownload(
                    () -> page.getByText("Download ledger.ndjson").click());
            var lines = java.nio.file.Files.readAllLines(saved.path());
            org.assertj.core.api.Assertions.assertThat(lines.size()).isGreaterThanOrEqualTo(58);
            org.assertj.core.api.Assertions.assertThat(lines.get(0)).contains("\"seq\":1");
        }
    }

    @Test
    void who_may_not_read_the_ledger_is_told_who_may() {
        for (var name : new String[] {"radiographer", "admin"}) {
            try (var visit = SITE.visit(Screen.SMALL).as(name)) {
                var page = visit.open("/audit");
                assertThat(page.getByText("read by lead radiographers and medical physicists"))
                        .isVisible();
                assertThat(page.locator(".proof")).hasCount(0);
                visit.assertAccessible();
                visit.assertClean();
            }
        }
    }

    @Test
    void what_could_not_be_verified_is_not_known_and_never_green() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit");
            assertThat(page.locator(".tell.good")).isVisible();
            page.route("**/audit/verification", route -> route.abort());
            button(page, "Verify now").click();
            assertThat(page.getByText("Not known.")).isVisible();
            assertThat(page.locator(".proof .good")).hasCount(0);
            page.unroute("**/audit/verification");
            page.route("**/audit/verification", route -> {}); // never answered
            button(page, "Verify now").click();
            assertThat(page.getByText("Not known yet.")).isVisible();
            assertThat(page.locator(".proof progress")).isVisible();
            assertThat(button(page, "Verify now")).isDisabled();
            assertThat(page.locator(".proof .good")).hasCount(0);
        }
    }

    @Test
    void an_answer_that_the_ledger_is_in_doubt_ends_what_was_green_at_once() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/audit#view=reviews");
            assertThat(page.locator(".tell.good")).isVisible();
            page.route("**/audit/verification", route -> {}); // never answered
            page.route(
                    "**/audit/reviews",
                    route -> route.fulfill(
                            new Route.FulfillOptions()
                                    .setStatus(503)
                                    .setContentType("application/problem+json")
                                    .setBody(
                                            "{\"code\": \"ledger-in-doubt\", \"detail\": \"nothing was done: event 3 is missing\"}")));
            page.getByLabel("Looked at from the day").fill("2026-09-01");
            page.getByLabel("To the day, included").fill("2026-09-30");
            page.getByLabel("What you found").fill("Nothing to be remarked");
            button(page, "Record the review").click();
            assertThat(page.locator(".proof")).containsText("The service says: nothing was done: event 3 is missing.");
            assertThat(page.locator(".proof .good")).hasCount(0);
            visit.assertAccessible();
        }
    }

    @Test
    void agreement_with_checkpoints_is_not_claimed_where_there_is_none() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            visit.page().route("**/audit/verification", route -> {
                var answer = route.fetch();
                route.fulfill(new Route.FulfillOptions()
                        .setResponse(answer)
                        .setBody(answer.text()
                                .replaceFirst(
                                        "\"checkpointsSince\".*\"notes\"",
                                        "\"checkpointsSince\":null,\"checkpoint\":null,\"notes\"")));
            });
            var proof = visit.open("/audit").locator(".proof");
            assertThat(proof.locator(".good"))
                    .containsText("they agree with the records they speak of. No checkpoint is signed yet");
            assertThat(proof).not().containsText("signed checkpoints");
        }
    }

    @Test
    void checkpoints_that_begin_anew_are_seen_to_begin_late() throws IOException {
        String before;
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            before = firstCheckpoint(visit.open("/audit"));
        }
        SITE.stop();
        for (var file : List.of("checkpoints.ndjson", "ledger.key", "ledger.pub")) {
            Files.delete(Path.of("target", "browser", "AuditPastBrowserTest", "wallchart-demo.ledger", file));
        }
        SITE.startAgain();
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var after = firstCheckpoint(visit.open("/audit"));
            org.assertj.core.api.Assertions.assertThat(after)
                    .startsWith("event ")
                    .isNotEqualTo(before);
        }
    }

    /** What stands beside "First checkpoint" once the ledger is verified. */
    private static String firstCheckpoint(Page page) {
        assertThat(page.locator(".tell.good")).isVisible();
        return page.locator(".proof dt")
                .filter(new Locator.FilterOptions().setHasText("First checkpoint"))
                .locator("+ dd")
                .innerText();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_moves_away_when_the_verification_is_done(Screen screen) {
        try (var visit = SITE.visit(screen).as("lead")) {
            var waiting = new AtomicReference<Route>();
            visit.page().route("**/audit/verification", waiting::set);
            var page = visit.open("/audit");
            assertThat(page.locator(".timeline ol li")).hasCount(50);
            double before = page.locator(".views").boundingBox().y;
            waiting.get().resume();
            assertThat(page.locator(".tell.good")).isVisible();
            org.assertj.core.api.Assertions.assertThat(page.locator(".views").boundingBox().y)
                    .isCloseTo(before, org.assertj.core.api.Assertions.within(1.0));
        }
    }

    @Test
    void a_filter_half_typed_stays_while_the_ledger_is_verified() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/audit");
            assertThat(page.locator(".tell.good")).isVisible();
            page.getByLabel("Person").fill("physi");
            page.locator("select[name=room]").selectOption("r3");
            button(page, "Verify now").click();
            assertThat(page.locator(".tell.good")).isVisible();
            assertThat(page.getByLabel("Person")).hasValue("physi");
            assertThat(page.locator("select[name=room]")).hasValue("r3");
        }
    }
}
