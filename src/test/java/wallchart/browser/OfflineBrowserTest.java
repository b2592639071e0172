package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The room page without the service: installed once, it opens, answers, says its age, and catches up by itself. */
class OfflineBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String ANSWERS = "/pages/room/pack-answers.js";

    private static final String BEGIN =
            """
            async () => {
              const { open } = await import('/pages/room/pack.js');
              window.pack = await open('r1', 'demo-r1');
              await pack.renew();
              return (await import('/pages/room/install.js')).whenInstalled;
            }""";

    private static final String FOUND =
            "JSON.stringify(pack.find({ bodyPart: 'KNEE', projection: 'ap', support: 'table-bucky', thicknessCm: 12.4 }))";

    @Test
    void it_survives_the_service_says_its_age_and_catches_up_by_itself() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            var page = visit.open("/rooms/r1");
            assertThat(page.evaluate(BEGIN)).isEqualTo(true);
            var before = page.evaluate(FOUND);
            int version = (int) page.evaluate("pack.head.chart.version");
            SITE.stop();
            try {
                withoutTheService(page, before);
            } finally {
                SITE.startAgain();
            }
            NextVersion.sign(SITE, "r1", "Said once more");
            page.clock().fastForward(31_000);
            page.waitForFunction("(version) => pack.head.chart.version > version", version);
            assertThat(page.evaluate("pack.trouble")).isNull();
            visit.assertClean();
        }
    }

    private static void withoutTheService(Page page, Object before) {
        page.reload();
        assertThat(page.locator("h1").first().isVisible()).isTrue();
        assertThat(page.evaluate(BEGIN)).isEqualTo(true);
        assertThat(page.evaluate("pack.trouble.code")).isEqualTo("unreachable");
        assertThat(page.evaluate(FOUND)).isEqualTo(before).asString().contains("\"answeredCm\":12.5");
        assertThat(page.evaluate("pack.ageState()")).isEqualTo("fresh");
        page.clock().fastForward(Duration.ofMinutes(24 * 60 - 10).toMillis());
        assertThat(page.evaluate("pack.ageState()")).isEqualTo("fresh");
        page.clock().fastForward(Duration.ofMinutes(10).toMillis());
        assertThat(page.evaluate("`${pack.ageState()}: ${pack.ageWords()}`"))
                .isEqualTo("amber: given out 24 hours ago");
        page.clock().fastForward(Duration.ofHours(143).toMillis());
        assertThat(page.evaluate("pack.ageState()")).isEqualTo("amber");
        page.clock().fastForward(Duration.ofHours(1).toMillis());
        assertThat(page.evaluate("`${pack.ageState()}: ${pack.ageWords()}`")).isEqualTo("red: given out 7 days ago");
        // the demo's room has a version signed for some days later
        assertThat((String) page.evaluate(FOUND))
                .contains("\"cautions\":[\"this is version 2, kept here; version 3 is in force since");
    }

    @Test
    void at_the_page_itself_an_examination_is_answered_offline_and_the_age_stands_in_sight() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            var room = RoomPage.open(visit, "r1");
            visit.page().evaluate(BEGIN);
            SITE.stop();
            try {
                var page = visit.page();
                page.reload();
                assertThat(page.locator(".regions")).isVisible();
                room.type("kn ap tab").press("Enter").type("12.3");
                assertThat(page.locator("#foot")).containsText("offline, chart given out");
                assertThat(room.technique()).containsText("kV");
                visit.assertAccessible();
                visit.picture("offline-fresh");
                page.clock().fastForward(Duration.ofHours(25).toMillis());
                assertThat(page.locator("#foot .caution")).containsText("given out 25 hours ago");
                visit.picture("offline-amber");
                page.clock().fastForward(Duration.ofDays(7).toMillis());
                assertThat(page.locator("#foot .blocking")).containsText("given out 8 days ago");
                visit.assertAccessible();
                visit.picture("offline-red");
            } finally {
                SITE.startAgain();
            }
            visit.assertClean();
        }
    }

    @Test
    void a_clock_before_the_pack_was_given_out_is_never_fresh() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/rooms/r1");
            page.evaluate(BEGIN);
            var issued = "Date.parse(pack.head.issuedAt)";
            assertThat(page.evaluate("pack.ageState(" + issued + " - 30_000)"))
                    .as("clocks differ by seconds")
                    .isEqualTo("fresh");
            assertThat(page.evaluate("pack.ageState(" + issued + " - 60_000)")).isEqualTo("red");
            assertThat((String) page.evaluate("pack.ageWords(" + issued + " - 60_000)"))
                    .startsWith("this workstation's clock is wrong");
        }
    }

    @Test
    void a_version_that_has_come_into_force_meanwhile_is_named_first() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/rooms/r1");
            page.evaluate(BEGIN);
            page.evaluate("pack.head.next = { version: 77, inForceFrom: new Date(Date.now() + 60_000).toISOString() }");
            var caution =
                    "pack.find({ bodyPart: 'KNEE', projection: 'ap', support: 'table-bucky', thicknessCm: 12 }, Date.now() + %d)"
                            + ".technique.cautions[0]";
            assertThat((String) page.evaluate(caution.formatted(0))).doesNotContain("77");
            assertThat((String) page.evaluate(caution.formatted(60_000))).contains("version 77 is in force since");
        }
    }

    @Test
    @SuppressWarnings("unchecked")
    void everything_that_the_page_loads_is_kept_and_nothing_of_the_interface() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/rooms/r1");
            page.evaluate("localStorage.setItem('wallchart.token.r1', 'demo-r1')");
            page.evaluate(BEGIN);
            page.reload();
            page.waitForLoadState(com.microsoft.playwright.options.LoadState.NETWORKIDLE);
            page.evaluate("fetch('/api/v1/rooms/r1', { headers: { Authorization: 'Bearer demo-r1' } })");
            var kept = (List<String>)
                    page.evaluate(
                            """
                    async () => {
                      const caught = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
                      return caught.flat().map(({ url }) => new URL(url).pathname);
                    }""");
            var loaded = (List<String>)
                    page.evaluate(
                            """
                    performance.getEntriesByType('resource').filter(({ responseStatus }) => responseStatus < 400)
                      .map(({ name }) => new URL(name).pathname).filter((path) => !path.startsWith('/api/'))""");
            assertThat(loaded).contains("/pages/base.css");
            assertThat(kept)
                    .containsAll(loaded)
                    .contains("/rooms/-", ANSWERS)
                    .noneMatch(path -> path.startsWith("/api/"));
        }
    }

    @Test
    void an_address_that_merely_begins_like_a_rooms_is_not_the_rooms_page_and_asks_the_interface_nothing() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/rooms/r1");
            assertThat(page.evaluate(BEGIN)).isEqualTo(true);
            var asked = new java.util.concurrent.CopyOnWriteArrayList<String>();
            page.waitForFunction("() => navigator.serviceWorker.controller !== null");
            page.onRequest(request -> asked.add(request.url()));
            for (var name : List.of("r1%2Fsheet.pdf%3Fpaper=a4", "r1%2F..%2Fr2", "R1", "r1.", "-r1")) {
                asked.clear();
                page.navigate("/rooms/" + name);
                page.waitForTimeout(700);
                assertThat(asked).as(name).noneMatch(url -> url.contains("sheet.pdf?") || url.contains("/rooms/r1/"));
            }
            page.navigate("/rooms/r1%2Fsheet.pdf%3Fpaper=a4");
            assertThat(page.locator("body"))
                    .containsText("the path has a character or a segment that no address here has");
            assertThat(visit.open("/rooms/r1").locator("#head")).isVisible();
        }
    }

    @Test
    void a_new_build_is_kept_whole_beside_the_old_one_and_taken_when_the_page_says_so() {
        try (var build = new NextBuild(SITE.address());
                var visit = new Visit(build.address(), Screen.SMALL)) {
            var page = visit.open("/rooms/r1");
            assertThat(page.evaluate(BEGIN)).isEqualTo(true);
            page.evaluate(
                    "async () => (await import('/pages/room/install.js')).whenNewer((change) => { window.changeOver = change; })");
            var worker = build.file("/room-worker.js");
            var old = build.file(ANSWERS);
            var next = old + "// the next build\n";

            build.replace(ANSWERS, next);
            build.replace("/room-worker.js", worker.replaceFirst("wallchart-room-[0-9a-f]+", "wallchart-room-damaged"));
            assertThat(updated(page))
                    .as("a file that is not the one the list names")
                    .isEqualTo("redundant");
            assertThat((List<?>) page.evaluate("caches.keys()")).hasSize(1);

            build.replace(
                    "/room-worker.js",
                    worker.replaceFirst("wallchart-room-[0-9a-f]+", "wallchart-room-next")
                            .replace(integrity(old), integrity(next)));
            assertThat(updated(page)).isEqualTo("installed");
            assertThat(page.evaluate("fetch('" + ANSWERS + "').then((answer) => answer.text())"))
                    .isEqualTo(old);
            page.evaluate("changeOver()");
            page.waitForFunction("() => window.changeOver === undefined && document.readyState === 'complete'");
            assertThat(page.evaluate("fetch('" + ANSWERS + "').then((answer) => answer.text())"))
                    .isEqualTo(next);
            assertThat(page.evaluate("caches.keys()")).isEqualTo(List.of("wallchart-room-next"));
        }
    }

    /** Looks for a new build; says what became of it. */
    private static Object updated(Page page) {
        return page.evaluate(
                """
                async () => {
                  const registration = await navigator.serviceWorker.getRegistration('/rooms/');
                  const outcome = new Promise((done) => {
                    registration.onupdatefound = () => {
                      const worker = registration.installing;
                      worker.addEventListener('statechange', () => done(worker.state));
                    };
                  });
                  await registration.update().catch(() => {});
                  return outcome;
                }""");
    }

    private static String integrity(String text) {
        try {
            var digest =
                    MessageDigest.getInstance("SHA-256").digest(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (java.security.NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
