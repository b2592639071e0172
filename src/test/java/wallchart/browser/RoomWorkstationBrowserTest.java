package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Route;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The workstation itself: its token, what it does when nobody answers, its clock, and that it forgets the last patient. */
class RoomWorkstationBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String TOKEN = "This workstation's room token, from your administrator";
    private static final String INTERFACE = "**/api/v1/**";

    @Test
    void the_token_is_asked_once_in_place_and_bad_ones_are_explained() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/rooms/r1");
            var room = RoomPage.of(visit);
            assertThat(page.getByLabel(TOKEN)).isVisible();
            visit.assertAccessible();
            page.getByLabel(TOKEN).fill("wrong");
            page.getByLabel(TOKEN).press("Enter");
            assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("That token is not accepted.");
            page.getByLabel(TOKEN).fill("demo-r2");
            page.getByLabel(TOKEN).press("Enter");
            assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("That token is for another room.");
            visit.assertAccessible();
            visit.picture("room-token");
            page.getByLabel(TOKEN).fill(" demo-r1 ");
            page.getByLabel(TOKEN).press("Enter");
            assertThat(page.locator(".regions")).isVisible();
            page.reload();
            assertThat(page.locator(".regions")).isVisible();
            assertThat(page.getByLabel(TOKEN)).hasCount(0);
            room.type("ka12");
            assertThat(room.technique()).isVisible();
            visit.assertClean();
        }
    }

    @Test
    void a_token_in_the_address_is_kept_and_leaves_the_address() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            assertThat(room.page().url()).isEqualTo(SITE.address() + "/rooms/r1");
        }
    }

    @Test
    void a_token_that_was_revoked_is_asked_again_beside_the_examination_and_the_kept_chart_still_answers() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            var page = room.page();
            page.route(INTERFACE, RoomWorkstationBrowserTest::unauthorized);
            room.type("ka12");
            assertThat(page.getByLabel(TOKEN)).isVisible();
            assertThat(room.chosen()).containsText("Knee AP");
            assertThat(room.thickness()).hasValue("12");
            assertThat(room.set("Tube voltage")).hasText("62kV");
            page.unrouteAll();
            page.getByLabel(TOKEN).fill("demo-r1");
            page.getByLabel(TOKEN).press("Enter");
            assertThat(page.getByLabel(TOKEN)).hasCount(0);
            assertThat(room.set("Tube voltage")).hasText("62kV");
            assertThat(page.locator(".technique")).not().containsText("Offline");
            assertThat(room.thickness()).hasValue("12");
        }
    }

    @Test
    void with_a_refused_token_and_not_now_the_kept_chart_answers_and_the_foot_says_why_and_how_old_it_is() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page()
                    .clock()
                    .install(new Clock.InstallOptions().setTime(Instant.now().toString()));
            var room = RoomPage.open(visit, "r1");
            visit.page().route(INTERFACE, RoomWorkstationBrowserTest::unauthorized);
            room.type("ka12");
            room.button("Not now").click();
            assertThat(visit.page().getByLabel(TOKEN)).hasCount(0);
            assertThat(visit.page().locator(".technique")).containsText("Token not accepted. From the chart kept");
            assertThat(room.foot().locator(".mark").first())
                    .containsText("token not accepted: kept chart, given out just now");
            assertThat(room.foot()).not().containsText("live");
            assertThat(room.foot()).not().containsText("offline");
            visit.assertAccessible();
            visit.picture("room-token-refused");
            later(room, 25);
            assertThat(room.foot().locator(".mark.caution"))
                    .containsText("token not accepted: kept chart, given out 25 hours ago");
            later(room, 8 * 24);
            assertThat(room.foot().locator(".mark.blocking"))
                    .containsText("token not accepted: kept chart, given out 8 days ago: not to be relied on");
            visit.assertAccessible();
        }
    }

    @Test
    void a_token_that_is_not_taken_leaves_the_kept_one_its_chart_and_its_key_as_they_were() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            var page = room.page();
            var key = "async () => (await (await import('/pages/room/pack-keep.js')).read('r1')).key";
            var before = page.evaluate(key);
            for (var wrong : java.util.List.of("wrong", "demo-r2")) {
                room.button("Workstation").click();
                room.button("Change the room token").click();
                page.getByLabel(TOKEN).fill(wrong);
                page.getByLabel(TOKEN).press("Enter");
                assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                        .containsText("That token is");
                room.button("Not now").click();
            }
            assertThat(page.evaluate("localStorage.getItem('wallchart.token.r1')"))
                    .isEqualTo("demo-r1");
            assertThat(page.evaluate(key)).isEqualTo(before);
        }
    }

    @Test
    void a_link_with_another_token_replaces_nothing_unasked_and_one_that_is_not_taken_is_not_even_offered() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = RoomPage.open(visit, "r1").page();
            var kept = "localStorage.getItem('wallchart.token.r1')";
            page.evaluate("localStorage.setItem('wallchart.token.r1', 'an-old-one')");
            page.navigate("about:blank");
            visit.open("/rooms/r1#token=demo-r1");
            var question = page.getByText("Replace this workstation's token?");
            assertThat(question).isVisible();
            visit.assertAccessible();
            visit.picture("room-token-replace");
            assertThat(page.evaluate(kept)).isEqualTo("an-old-one");
            RoomPage.of(visit).button("Keep the token that is here").click();
            assertThat(question).hasCount(0);
            assertThat(page.evaluate(kept)).isEqualTo("an-old-one");
            page.navigate("about:blank");
            visit.open("/rooms/r1#token=demo-r1");
            RoomPage.of(visit).button("Replace it").click();
            assertThat(question).hasCount(0);
            assertThat(page.evaluate(kept)).isEqualTo("demo-r1");
            page.navigate("about:blank");
            visit.open("/rooms/r1#token=demo-r2");
            assertThat(RoomPage.of(visit).foot().locator(".mark").first()).hasText("live");
            assertThat(question).hasCount(0);
            assertThat(page.evaluate(kept)).isEqualTo("demo-r1");
        }
    }

    private static void unauthorized(Route route) {
        route.fulfill(new Route.FulfillOptions()
                .setStatus(401)
                .setContentType("application/problem+json")
                .setBody("{\"code\": \"wrong-token\", \"detail\": \"the token is not known\"}"));
    }

    @Test
    void when_nobody_answers_the_kept_chart_does_and_says_its_age_from_fresh_over_amber_to_red() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page()
                    .clock()
                    .install(new Clock.InstallOptions().setTime(Instant.now().toString()));
            var room = RoomPage.open(visit, "r1");
            assertThat(room.foot().locator(".mark")).hasText("live");
            visit.context().setOffline(true);
            room.type("ka12.4");
            assertThat(room.page().locator(".technique"))
                    .containsText("worked out for 12.5 cm, the nearest kept thickness to 12.4 cm");
            assertThat(room.set("Tube voltage")).hasText("62kV");
            assertThat(room.foot().locator(".mark")).containsText("offline, chart given out");
            visit.picture("room-offline");
            later(room, 25);
            assertThat(room.foot().locator(".mark.caution")).containsText("a newer version may be in force");
            visit.assertAccessible();
            later(room, 8 * 24);
            assertThat(room.foot().locator(".mark.blocking")).containsText("use the sheet on the wall");
            visit.assertAccessible();
            visit.context().setOffline(false);
            room.type("ka12");
            assertThat(room.technique()).isVisible();
            assertThat(room.page().locator(".technique")).not().containsText("Offline");
            assertThat(room.foot().locator(".mark").first()).hasText("live");
        }
    }

    @Test
    void an_answer_of_the_kept_chart_gives_way_to_the_live_one_as_soon_as_there_is_one() {
        try (var room = RoomPage.open(SITE, Screen.SMALL, "r1")) {
            var visit = room.visit();
            visit.context().setOffline(true);
            room.type("ka12.4");
            assertThat(room.page().locator(".technique"))
                    .containsText(
                            "the nearest kept thickness to 12.4 cm; at 12 cm it is 62 kV, 16 mAs (800 mA, 20 ms)");
            visit.context().setOffline(false);
            assertThat(room.page().locator(".technique")).not().containsText("Offline");
            assertThat(room.page().locator("#technique-title")).containsText("12.4 cm");
            assertThat(room.foot().locator(".mark").first()).hasText("live");
        }
    }

    private static void later(RoomPage room, int hours) {
        room.page()
                .clock()
                .setSystemTime(Instant.now().plus(hours, ChronoUnit.HOURS).toString());
        room.press("Escape").type("ka12");
        assertThat(room.technique()).isVisible();
    }

    @Test
    void a_service_that_is_busy_at_the_first_opening_is_asked_again_without_anybody_doing_anything() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            visit.page().route("**/pack", RoomWorkstationBrowserTest::busy);
            visit.open("/rooms/r1#token=demo-r1");
            assertThat(visit.page().getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("The chart cannot be shown. try again shortly");
            visit.assertAccessible();
            visit.page().unrouteAll();
            visit.page().clock().fastForward("00:06");
            assertThat(visit.page().locator(".regions")).isVisible();
        }
    }

    private static void busy(Route route) {
        route.fulfill(new Route.FulfillOptions()
                .setStatus(503)
                .setContentType("application/problem+json")
                .setBody("{\"code\": \"unavailable\", \"detail\": \"try again shortly\"}"));
    }

    @Test
    void a_review_that_is_overdue_is_said_at_the_foot() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page()
                    .clock()
                    .install(new Clock.InstallOptions()
                            .setTime(Instant.now().plus(500, ChronoUnit.DAYS).toString()));
            var room = RoomPage.open(visit, "r1");
            assertThat(room.foot()).containsText("review OVERDUE since");
        }
    }

    @Test
    void the_page_clears_by_itself_after_a_warning_and_any_touch_keeps_it() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            var room = RoomPage.open(visit, "r1");
            room.type("ka12");
            assertThat(room.technique()).isVisible();
            visit.page().clock().fastForward("04:45");
            assertThat(room.page().locator(".warned")).containsText("Clears in 20 seconds.");
            visit.assertAccessible();
            room.page().locator(".set").click();
            assertThat(room.page().locator(".warned")).hasCount(0);
            visit.page().clock().fastForward("04:45");
            assertThat(room.technique()).isVisible();
            visit.page().clock().fastForward("00:20");
            assertThat(room.technique()).hasCount(0);
            assertThat(room.page().locator(".regions")).isVisible();
            assertThat(room.page().locator(".hint")).containsText("Cleared: nobody touched this page for 5 minutes.");
        }
    }
}
