package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.browser.Find.button;
import static wallchart.browser.Find.byTabulator;
import static wallchart.browser.Find.byTabulatorBack;
import static wallchart.browser.Find.heading;
import static wallchart.browser.Find.lookAt;
import static wallchart.browser.Find.text;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.RequestOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A medical physicist enters what was measured: typed, pasted, tried out, questioned, put in force; nothing that was typed is lost. */
class EquipmentEntryBrowserTest {

    private static final String MOBILE = "/equipment/r3#view=measure";

    /** The first measurement of the mobile unit, as the README has it. */
    private static final String POINTS = "60\t32.6\n80\t61.5\n100\t95.1\n120\t130";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static void fields(Page page, String day) {
        page.getByLabel("Measured on").fill(day);
        page.getByLabel("Total filtration as stated, mm Al").fill("3.1");
        page.getByLabel("Half-value layer, mm Al").fill("3.1");
        page.getByLabel("measured at, kV").fill("80");
        page.getByLabel("Expanded uncertainty, %").fill("8");
    }

    private static void paste(Page page, String lines) {
        page.getByLabel("kV, line 1")
                .evaluate(
                        "(field, text) => { const data = new DataTransfer(); data.setData('text', text);"
                                + " field.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })); }",
                        lines);
    }

    @Test
    void pasted_points_are_tried_put_in_force_and_drawn_with_the_numbers_of_the_interface() throws Exception {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open(MOBILE);
            fields(page, "2025-03-10");
            paste(page, "kV\toutput\n" + POINTS.replace('.', ','));
            assertThat(page.getByText("4 lines taken, 1 left out")).isVisible();
            assertThat(button(page, "Put in force")).isDisabled();
            button(page, "Try it").click();
            lookAt(
                    visit,
                    "equipment-tried",
                    Screen.SMALL,
                    heading(page, "What it would do (compared with revision 1)"));
            page.getByLabel("Reason").fill("First measurement of the mobile unit");
            button(page, "Put in force").click();
            assertThat(page.getByText("It is revision 2")).isVisible();
            assertThat(page.getByLabel("Measured on")).hasValue("");
            visit.open("/equipment/r3");
            assertThat(page.getByText("overdue").first()).isVisible();
            assertThat(page.locator("table.points tbody tr")).hasCount(4);
            var points = new JsonMapper()
                    .readTree(visit.context()
                            .request()
                            .get("/api/v1/rooms/r3/equipment/calibration")
                            .text())
                    .get("points");
            for (int i = 0; i < points.size(); i++) {
                var cells = page.locator("table.points tbody tr")
                        .nth(i)
                        .locator("th, td")
                        .allTextContents();
                assertThat(Double.parseDouble(cells.get(0)))
                        .isEqualTo(points.get(i).get("kV").doubleValue());
                assertThat(Double.parseDouble(cells.get(1)))
                        .isEqualTo(points.get(i).get("measured").doubleValue());
                assertThat(Double.parseDouble(cells.get(2)))
                        .isCloseTo(
                                points.get(i).get("fitted").doubleValue(),
                                org.assertj.core.api.Assertions.within(0.05));
                assertThat(Double.parseDouble(cells.get(3)))
                        .isEqualTo(points.get(i).get("residualPercent").doubleValue());
                assertThat(Double.parseDouble(cells.get(4)))
                        .isEqualTo(points.get(i).get("deviationPercent").doubleValue());
            }
            visit.assertClean();
        }
    }

    @Test
    void by_keyboard_alone_a_questioned_point_is_seen_stood_by_and_tried_again() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/equipment/r1#view=measure");
            fields(page, "2026-10-20");
            paste(page, "50\t17.4\n60\t26.1\n70\t36.6\n80\t57\n90\t60.6\n100\t73.5\n120\t100.2");
            page.getByLabel("Total filtration as stated, mm Al").fill("3");
            page.getByLabel("Half-value layer, mm Al").fill("3.2");
            page.getByLabel("Expanded uncertainty, %").focus();
            byTabulator(page, "Try it");
            page.keyboard().press("Enter");
            assertThat(text(page, "This looks like a slip.")).isVisible();
            assertThat(page.locator("#outcome")).isFocused();
            assertThat(page.locator("#outcome .mark")).hasText("questioned");
            assertThat(page.getByText("off the fit of the other points")).isVisible();
            assertThat(page.locator(".fit-plot canvas")).hasCount(2);
            visit.assertAccessible();
            visit.picture("equipment-questioned-small");
            byTabulator(page, "80 kV: 57 uGy/mAs");
            page.keyboard().press("Space");
            byTabulatorBack(page, "Try it");
            page.keyboard().press("Enter");
            assertThat(heading(page, "What it would do (compared with revision 1)"))
                    .isVisible();
            assertThat(page.locator(".mark").getByText("questioned, confirmed")).isVisible();
            page.getByLabel("µGy/mAs at 1 m, line 4").fill("48.2");
            assertThat(button(page, "Put in force")).isDisabled();
            visit.assertClean();
        }
    }

    @Test
    void who_was_before_is_named_and_what_was_typed_is_still_there() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/equipment/r2#view=grid&grid=g8-table");
            page.getByLabel("mAs with over without, line 1").fill("3.3");
            button(page, "Try it").click();
            assertThat(page.getByText("Factors of grids")).isVisible();
            page.getByLabel("Reason").fill("Measured again with the new phantom");
            another(visit, "r2");
            button(page, "Put in force").click();
            assertThat(text(page, "Somebody was before you.")).isVisible();
            assertThat(page.getByText("Renamed meanwhile by somebody")).isVisible();
            assertThat(page.getByLabel("mAs with over without, line 1")).hasValue("3.3");
            visit.assertAccessible();
            visit.picture("equipment-meanwhile-small");
            button(page, "Try it").click();
            assertThat(page.getByText("Factors of grids")).isVisible();
            button(page, "Put in force").click();
            assertThat(text(page, "In force.")).isVisible();
            assertThat(page.getByLabel("mAs with over without, line 1")).hasValue("3.3");
            assertThat(page.getByLabel("Reason")).hasValue("");
            visit.assertClean();
        }
    }

    /** Somebody else enters the room's equipment with another name. */
    private static void another(Visit visit, String room) {
        var request = visit.context().request();
        var address = "/api/v1/rooms/" + room + "/equipment";
        var inForce = request.get(address);
        var body = inForce.text()
                .replaceFirst(".*\"document\":(\\{.*})}$", "$1")
                .replace("older bucky room", "oldest bucky room");
        var token = String.valueOf(
                visit.page().evaluate("JSON.parse(localStorage.getItem('wallchart.session')).csrfToken"));
        var answer = request.put(
                address,
                RequestOptions.create()
                        .setHeader("X-CSRF-Token", token)
                        .setHeader("Content-Type", "application/json")
                        .setHeader("If-Match", inForce.headers().get("etag"))
                        .setData("{\"document\": " + body + ", \"reason\": \"Renamed meanwhile by somebody\"}"));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
    }

    @Test
    void a_session_that_is_over_and_a_reload_lose_nothing() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/equipment/r1#view=measure");
            fields(page, "2026-10-21");
            paste(page, "50\t17.4\n80\t48.2\n120\t100.2");
            visit.context().clearCookies();
            button(page, "Try it").click();
            page.locator("dialog").getByLabel("Password").fill("demo-physicist");
            page.locator("dialog button.first").click();
            assertThat(page.locator("#outcome")).isFocused();
            assertThat(page.getByLabel("Measured on")).hasValue("2026-10-21");
            page.reload();
            assertThat(page.getByLabel("Measured on")).hasValue("2026-10-21");
            assertThat(page.getByLabel("kV, line 3")).hasValue("120");
            button(page, "Empty the form").click();
            assertThat(page.getByLabel("Measured on")).hasValue("");
        }
    }

    @Test
    void what_is_no_measurement_is_said_at_its_field() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/equipment/r1#view=measure");
            fields(page, "2099-01-01");
            paste(page, "50\t17.4\n80\t48.2\n120\t100.2");
            button(page, "Try it").click();
            assertThat(page.getByText("a day that has not come yet").first()).isVisible();
            assertThat(page.getByLabel("Measured on")).hasAttribute("aria-invalid", "true");
            page.getByLabel("Measured on").fill("2026-10-21");
            page.getByLabel("Half-value layer, mm Al").fill("three");
            button(page, "Try it").click();
            assertThat(text(page, "That did not work.")).isVisible();
            assertThat(page.getByLabel("Half-value layer, mm Al")).hasAttribute("aria-invalid", "true");
            assertThat(page.getByLabel("Half-value layer, mm Al")).hasValue("three");
            page.getByLabel("Half-value layer, mm Al").fill("3.2");
            page.getByLabel("Measured on").fill("2020-01-01");
            button(page, "Try it").click();
            assertThat(text(page, "A newer measurement is in force.")).isVisible();
            visit.assertAccessible();
            visit.assertClean();
        }
    }

    @Test
    void a_lead_tries_and_enters_nothing_and_a_radiographer_only_reads() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/equipment/r1#view=measure");
            assertThat(text(page, "Only tried.")).isVisible();
            assertThat(button(page, "Put in force")).hasCount(0);
        }
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/equipment/r1#view=measure");
            assertThat(text(page, "Not for every role.")).isVisible();
            assertThat(page.getByText("Enter a measurement")).hasCount(0);
            visit.open("/equipment/r9");
            page.reload();
            assertThat(text(page, "That did not work.")).isVisible();
            visit.assertClean();
        }
    }

    @Test
    void a_site_that_measures_in_inches_reads_and_types_inches_and_the_interface_gets_centimetres() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            visit.page().route("**/api/v1/site", route -> {
                var answer = route.fetch();
                route.fulfill(new com.microsoft.playwright.Route.FulfillOptions()
                        .setResponse(answer)
                        .setBody(answer.text().replace("\"lengthUnit\":\"cm\"", "\"lengthUnit\":\"in\"")));
            });
            var page = visit.open("/equipment/r1#view=room");
            assertThat(page.getByText("43.3 in, used from 37.4 to 51.2 in"))
                    .isVisible(); // 110, 95 and 130 cm over 2.54
            visit.open("/equipment/r1#view=grid&grid=g10-f110");
            page.getByLabel("Used from, in").fill("38");
            var sent = page.waitForRequest(
                    "**/equipment/effects", () -> button(page, "Try it").click());
            assertThat(sent.postData()).contains("\"focalRangeCm\":{\"from\":96.52,\"to\":130.05}"); // 38 and 51.2 in
        }
    }
}
