package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The chart page: the curves of an examination, two versions beside each other, and what goes wrong on the way. */
class ChartCurvesBrowserTest {

    private static final String PELVIS = "/charts/r1#version=2&examination=PELVIS/ap/adult/table-bucky";
    private static final String ASKED = "?bodyPart=PELVIS&projection=ap&patientGroup=adult&support=table-bucky";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @BeforeAll
    static void wait_longer_on_a_busy_machine() {
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
    }

    private static Object asked(Page page, String path) {
        return page.evaluate("(path) => fetch('/api/v1/charts/r1/versions/2' + path).then((one) => one.json())", path);
    }

    @ParameterizedTest
    @EnumSource
    void four_curves_are_drawn_with_a_reading_in_both_themes(Screen screen) {
        try (var visit = SITE.visit(screen).as("physicist")) {
            var page = visit.open(PELVIS);
            for (var plot : List.of("#plot-kv", "#plot-mas", "#plot-exposure", "#plot-kerma")) {
                assertThat(page.locator(plot + " canvas")).isVisible();
            }
            assertThat(page.locator("#reading")).containsText("22 cm, band 21 to 23");
            visit.assertAccessible();
            whole(page, "chart-curves-" + screen.name().toLowerCase(Locale.ROOT));
            page.locator(".masthead button[aria-pressed]").click();
            assertThat(page.locator("#plot-kv canvas")).hasCount(1);
            page.locator("#numbers summary").click();
            visit.assertAccessible();
            whole(page, "chart-curves-dim-" + screen.name().toLowerCase(Locale.ROOT));
            visit.assertClean();
        }
    }

    private static void whole(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(java.nio.file.Path.of("target", "screens", name + ".png")));
    }

    /** Every point of the interface against the table on the screen and against what the plots are given. */
    @Test
    @SuppressWarnings("unchecked")
    void table_and_plots_have_the_numbers_of_the_interface() {
        try (var visit = SITE.visit(Screen.WIDE).as("physicist")) {
            var page = visit.open(PELVIS);
            page.locator("#numbers summary").click();
            page.locator("#steps").selectOption("10");
            var points = new ArrayList<Map<String, Object>>();
            ((Map<String, List<Map<String, Object>>>) asked(page, "/courses" + ASKED))
                    .get("rows")
                    .forEach(row -> points.addAll((List<Map<String, Object>>) row.get("points")));
            assertThat(page.locator("#figures tbody tr")).hasCount(points.size());
            var shown = (List<List<String>>)
                    page.evaluate(
                            """
                    () => [...document.querySelectorAll('#figures tbody tr')]
                      .map((line) => [...line.cells].map((cell) => cell.textContent))
                    """);
            for (int i = 0; i < points.size(); i++) {
                var point = points.get(i);
                assertThat(shown.get(i).subList(0, 6))
                        .isEqualTo(List.of(
                                point.get("thicknessCm").toString(),
                                shown.get(i).get(1),
                                point.get("kV").toString(),
                                point.get("mAs").toString(),
                                point.get("mA").toString(),
                                point.get("timeMs").toString()));
            }
            assertThat(plotted(page, "plot-kv", 0)).isEqualTo(values(points, "kV"));
            assertThat(plotted(page, "plot-mas", 0)).isEqualTo(values(points, "mAs"));
            assertThat(plotted(page, "plot-exposure", 1))
                    .hasSize(predicted(page))
                    .doesNotContainNull();
        }
    }

    private static List<Double> values(List<Map<String, Object>> points, String name) {
        return points.stream()
                .map(point -> ((Number) point.get(name)).doubleValue())
                .toList();
    }

    @SuppressWarnings("unchecked")
    private static int predicted(Page page) {
        var physics = (Map<String, List<Map<String, List<Map<String, List<Object>>>>>>) asked(page, "/physics" + ASKED);
        return physics.get("examinations").get(0).get("rows").stream()
                .mapToInt(row -> row.get("curve").size())
                .sum();
    }

    /** What that line is given, where the interface has a point: not where it breaks off or is drawn on to a band's edge. */
    @SuppressWarnings("unchecked")
    private static List<Double> plotted(Page page, String place, int line) {
        var values = (List<Number>) page.evaluate(
                """
                async ([place, line, query]) => {
                  const { series } = await import('/pages/chart/lines.js');
                  const asked = async (what) => (await fetch(`/api/v1/charts/r1/versions/2/${what}${query}`)).json();
                  const [courses, physics] = [await asked('courses'), (await asked('physics')).examinations[0]];
                  const [xs, ys] = series({ courses, physics }).find((one) => one.place === place).lines[line].data;
                  return ys.filter((y, at) => y !== null && Math.abs(xs[at] * 100 - Math.round(xs[at] * 100)) < 1e-6);
                }
                """,
                List.of(place, line, ASKED));
        return values.stream().map(Number::doubleValue).toList();
    }

    @Test
    void the_pointer_reads_one_thickness_off_all_plots() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open(PELVIS);
            var plot = page.locator("#plot-mas .u-over");
            plot.scrollIntoViewIfNeeded();
            var box = plot.boundingBox();
            page.mouse().move(box.x + 3, box.y + box.height / 2);
            assertThat(page.locator("#reading")).containsText("band 15 to 18");
            page.mouse().move(box.x + box.width - 3, box.y + box.height / 2);
            assertThat(page.locator("#reading")).containsText("band 29 to 34");
            assertThat(page.locator("#thickness")).hasJSProperty("value", "189");
        }
    }

    @Test
    void what_physics_does_not_predict_is_said_and_not_drawn() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/charts/r1#version=2&examination=CHEST/pa/adult/wall-bucky");
            assertThat(page.locator("#chart .tell").first()).containsText("Receptor exposure not predicted");
            assertThat(page.locator("#plot-kerma canvas")).isVisible();
            assertThat(page.locator("#plot-exposure")).hasCount(0);
            assertThat(page.locator("#reading")).containsText("AEC, back-up");
            assertThat(page.locator("#reading")).containsText("at most");
            visit.assertAccessible();
            visit.picture("chart-curves-aec");
            visit.assertClean();
        }
    }

    /** One after another, as somebody would leaf through them. */
    @Test
    @SuppressWarnings("unchecked")
    void every_examination_of_a_room_can_be_drawn() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/charts/r2#version=4&examination=KNEE/ap/adult/table-bucky");
            assertThat(page.locator("#plot-kv canvas")).isVisible();
            var all = (List<String>) page.locator("#examination-picker option")
                    .evaluateAll("(options) => options.map((one) => one.value)");
            assertThat(all).hasSizeGreaterThan(80);
            for (int i = 0; i < all.size(); i += 9) {
                page.locator("#examination-picker").selectOption(all.get(i));
                assertThat(page.locator("#plot-kv canvas")).isVisible();
                assertThat(page.locator("#rows-of-examination tbody tr a").first())
                        .hasAttribute("href", java.util.regex.Pattern.compile(".*" + all.get(i) + "/.*"));
                assertThat(page.locator("canvas"))
                        .hasCount(page.locator(".plot").count());
            }
            visit.assertClean();
        }
    }

    @ParameterizedTest
    @EnumSource
    void two_versions_are_compared_row_by_row_with_who_signed_and_why(Screen screen) {
        try (var visit = SITE.visit(screen).as("lead")) {
            var page = visit.open("/charts/r1#from=1&to=2");
            assertThat(page.locator("#differences tr[data-key]")).hasCount(24);
            assertThat(page.locator("#adjustment-differences tr[data-key]")).hasCount(2);
            assertThat(page.locator("#signatures tbody tr")).hasCount(1);
            assertThat(page.locator("#signatures")).containsText("Exposure-index review over 20 weeks");
            var chest = page.locator("tr[data-key='CHEST/ap/adult/wall-bucky/15-19']");
            assertThat(chest.locator("del")).hasText("2.5");
            assertThat(chest.locator("ins")).hasText("2");
            visit.assertAccessible();
            visit.picture("chart-compare-" + screen.name().toLowerCase(Locale.ROOT));
            page.getByLabel("Changed (").uncheck();
            assertThat(page.locator("#differences tr[data-key]")).hasCount(13);
            page.getByText("Turn round").click();
            assertThat(page.locator("#signatures caption")).containsText("read backwards");
            page.getByLabel("Changed (").check();
            assertThat(chest.locator("del")).hasText("2");
            page.locator(".masthead button[aria-pressed]").click();
            visit.assertAccessible();
            page.goBack();
            assertThat(chest.locator("del")).hasText("2.5");
            visit.assertClean();
        }
    }

    @Test
    void a_version_beside_itself_differs_in_nothing() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r2#from=4&to=4");
            assertThat(page.getByText("No row and no adjustment differs.")).isVisible();
        }
    }

    private static void busy(Route route) {
        route.fulfill(new Route.FulfillOptions()
                .setStatus(503)
                .setContentType("application/problem+json")
                .setHeaders(Map.of("Retry-After", "1"))
                .setBody("{\"type\":\"/problems/busy\",\"title\":\"Busy\",\"status\":503,\"code\":\"busy\","
                        + "\"detail\":\"others are waiting already\"}"));
    }

    @Test
    void a_busy_service_is_said_and_asked_again_while_the_rows_can_be_read() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var times = new AtomicInteger();
            visit.page().route("**/physics", route -> {
                if (times.incrementAndGet() <= 2) {
                    busy(route);
                } else {
                    route.resume();
                }
            });
            var page = visit.open("/charts/r1#version=2");
            assertThat(page.locator("p.checks")).containsText("others are waiting already (try 2)");
            assertThat(page.locator("#how-many")).hasText("All 469 rows");
            assertThat(page.locator("p.checks a")).hasText("2 cautions, 6 notes");
            assertThat(times.get()).isEqualTo(3);
            visit.assertClean();
        }
    }

    @Test
    void long_work_can_be_left_and_taken_up_again() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            visit.page().route("**/physics", ChartCurvesBrowserTest::busy);
            var page = visit.open("/charts/r1#version=2");
            page.getByText("Leave it").click();
            assertThat(page.getByText("The chart was not held against beam physics."))
                    .isVisible();
            page.unroute("**/physics");
            page.getByText("Check now").click();
            assertThat(page.locator("p.checks a")).hasText("2 cautions, 6 notes");
            visit.assertClean();
        }
    }

    @Test
    void a_session_that_is_over_is_renewed_in_place() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r1#version=2");
            assertThat(page.locator("p.checks a")).isVisible();
            page.getByLabel("Words in a row").fill("knee");
            visit.context().clearCookies();
            page.getByText("Compare with version 1").click();
            assertThat(page.getByText("Your session is over.")).isVisible();
            page.getByLabel("Password").fill("demo-lead");
            page.locator("dialog button.first").click();
            assertThat(page.locator("#differences")).isVisible();
            page.goBack();
            assertThat(page.getByLabel("Words in a row")).hasValue("knee");
        }
    }

    @Test
    void a_fault_is_said_and_the_way_on_stays_open() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            visit.page().route("**/compare?*", route -> route.abort());
            var page = visit.open("/charts/r1#from=1&to=2");
            assertThat(page.locator("#chart .tell.blocking")).containsText("cannot be reached");
            page.unroute("**/compare?*");
            page.locator("#chart button", new Page.LocatorOptions().setHasText("Try again"))
                    .click();
            assertThat(page.locator("#differences")).isVisible();
        }
    }
}
