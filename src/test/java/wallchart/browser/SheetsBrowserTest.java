package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.print.ParsedSheet;

/** Printing sheets, finding those that no longer hold, and what a phone shows of the one it scanned. */
class SheetsBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static Download print(Page page, String room) {
        page.getByLabel("Room to print").selectOption(room);
        return page.waitForDownload(() -> counted(page, room).click());
    }

    /** The button, once it says how many pages there will be. */
    private static Locator counted(Page page, String room) {
        var button = page.getByRole(AriaRole.BUTTON, named("Print " + room));
        assertThat(button).containsText(Pattern.compile("Print " + room + ", [0-9]+ pages?"));
        return button;
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static String number(Download sheet) {
        return sheet.suggestedFilename().replaceAll(".*-([A-Z0-9]{12})\\.pdf", "$1");
    }

    private static void dim(Page page) {
        page.getByRole(AriaRole.BUTTON, named("Dim")).click();
    }

    @ParameterizedTest
    @EnumSource
    void the_lead_prints_a_sheet_and_finds_it_in_the_register(Screen screen) {
        try (var visit = SITE.visit(screen).as("lead")) {
            var page = visit.open("/sheets");
            var sheet = print(page, "r2");
            assertThat(sheet.suggestedFilename())
                    .startsWith("chart-r2-version-")
                    .endsWith(".pdf");
            assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("is made");
            assertThat(page.locator("table.register tbody tr").first()).containsText("r2");
            visit.assertAccessible();
            visit.picture("sheets-" + screen.name().toLowerCase(Locale.ROOT));
            dim(page);
            visit.assertAccessible();
            visit.picture("sheets-dim-" + screen.name().toLowerCase(Locale.ROOT));
            visit.assertClean();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoever_scans_a_sheet_reads_the_answer_in_one_word(Screen screen) {
        try (var lead = SITE.visit(screen).as("lead");
                var anybody = SITE.visit(screen)) {
            var number = number(print(lead.open("/sheets"), "r3"));
            var page = anybody.open("/sheets/" + number);
            assertThat(page.locator(".verdict .word")).hasText("CURRENT");
            assertThat(page.locator("main")).containsText("Use it for this room only");
            assertThat(page.locator("main").innerText()).doesNotContain("Alderby");
            anybody.assertAccessible();
            anybody.picture("sheet-" + screen.name().toLowerCase(Locale.ROOT));
            dim(page);
            anybody.assertAccessible();
            anybody.assertClean();
        }
    }

    @Test
    void what_is_printed_unless_somebody_says_otherwise_is_short_and_a_whole_chart_is_called_a_book()
            throws IOException {
        try (var visit = SITE.visit(Screen.WIDE).as("lead")) {
            var page = visit.open("/sheets#room=r2");
            assertThat(page.getByLabel("Room to print")).hasValue("r2");
            var pages = counted(page, "r2").innerText().replaceAll("\\D*r2, (\\d+).*", "$1");
            assertThat(Integer.parseInt(pages)).isLessThanOrEqualTo(4);
            var sheet = ParsedSheet.of(Files.readAllBytes(
                    page.waitForDownload(() -> counted(page, "r2").click()).path()));
            assertThat(sheet.pages()).isEqualTo(Integer.parseInt(pages));
            assertThat(sheet.words()).contains("Part of the chart only: Chest; Adult");
            page.getByLabel("The whole chart").check();
            assertThat(page.locator("#pages")).containsText("That is a book");
            assertThat(page.getByLabel("Patient group")).hasCount(0);
            visit.assertAccessible();
            visit.picture("sheets-whole-chart");
        }
    }

    @Test
    void one_press_of_the_button_prints_once() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/sheets");
            var gets = new ArrayList<String>();
            page.onRequest(request -> {
                if (request.url().contains("sheet.pdf") && request.method().equals("GET")) {
                    gets.add(request.url());
                }
            });
            var rows = page.locator("table.register tbody tr");
            var before = print(page, "r3").suggestedFilename();
            assertThat(rows.first()).containsText("Room r3");
            int entered = rows.count();
            var after = page.waitForDownload(() -> counted(page, "r3").dblclick());
            assertThat(after.suggestedFilename()).isNotEqualTo(before);
            assertThat(rows).hasCount(entered + 1);
            assertThat(gets).hasSize(2);
        }
    }

    @Test
    void the_register_needs_no_scrolling_sideways_on_the_10_inch_screen() {
        try (var visit = SITE.visit(Screen.TOUCH).as("lead")) {
            var page = visit.open("/sheets");
            var number = number(print(page, "r1"));
            assertThat(page.locator("table.register")).containsText(number.substring(0, 4));
            page.getByRole(AriaRole.BUTTON, named("Taken down")).first().click();
            assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("is noted as taken down");
            assertThat(
                            page.evaluate(
                                    "[...document.querySelectorAll('.scroll')].every((one) => one.scrollWidth <= one.clientWidth)"))
                    .isEqualTo(true);
        }
    }

    @Test
    void on_a_phone_the_answer_fits_without_scrolling_sideways() {
        try (var lead = SITE.visit(Screen.SMALL).as("lead");
                var phone = SITE.visit(Screen.TOUCH)) {
            var number = number(print(lead.open("/sheets"), "r1"));
            phone.page().setViewportSize(360, 740);
            var page = phone.open("/sheets/" + number);
            assertThat(page.locator(".verdict .word")).isVisible();
            assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                    .isEqualTo(true);
            phone.picture("sheet-phone");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"CDFGHJKMNPQR", "nonsense", "CDFG-HJKM"})
    void a_number_that_was_never_printed_is_no_sheet_of_this_department(String number) {
        try (var visit = SITE.visit(Screen.TOUCH)) {
            var page = visit.open("/sheets/" + number);
            assertThat(page.locator(".verdict .word")).hasText("NOT KNOWN HERE");
            assertThat(page.locator("main")).containsText(number);
            visit.assertAccessible();
        }
    }

    @Test
    void where_the_service_does_not_answer_no_sheet_is_called_current() {
        try (var visit = SITE.visit(Screen.TOUCH)) {
            visit.page().route("**/api/v1/sheets/*", route -> route.abort());
            var page = visit.open("/sheets/CDFGHJKMNPQR");
            assertThat(page.locator("main")).containsText("can neither be called current nor superseded");
            assertThat(page.locator("main")).not().containsText("CURRENT");
        }
    }

    @Test
    void a_sheet_is_printed_and_taken_down_by_keyboard_alone() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/sheets");
            page.getByLabel("Paper").focus();
            page.keyboard().press("ArrowDown");
            assertThat(page.getByLabel("Paper")).hasValue("letter");
            counted(page, "r1").focus();
            var sheet = page.waitForDownload(() -> page.keyboard().press("Enter"));
            assertThat(sheet.suggestedFilename()).contains("-letter-");
            var taken = page.getByRole(AriaRole.BUTTON, named("Taken down")).first();
            taken.focus();
            page.keyboard().press("Enter");
            assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("is noted as taken down");
            assertThat(page.locator("#hanging")).isFocused();
            visit.assertClean();
        }
    }

    @Test
    void a_part_of_the_chart_is_printed_and_one_that_is_empty_is_said() throws IOException {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/sheets");
            page.getByLabel("Region of the body").selectOption("spine");
            page.getByLabel("Patient group").selectOption("adult");
            var file = Files.readAllBytes(print(page, "r1").path());
            assertThat(ParsedSheet.of(file).words())
                    .contains("Part of the chart only: Spine; Adult", "INVENTED. NOT FOR PATIENTS.");
            page.getByLabel("Region of the body").selectOption("lower-limb");
            page.getByLabel("Patient group").selectOption("preterm");
            assertThat(page.locator("#pages")).containsText("has no row there");
            assertThat(page.getByRole(AriaRole.BUTTON, named("Print r1"))).isDisabled();
            visit.assertAccessible();
        }
    }

    /** The demo has no superseded sheet that hangs; what the interface would say of one is put in its place. */
    @ParameterizedTest
    @CsvSource({"superseded,SUPERSEDED: take it down", "equipment-moved,EQUIPMENT MOVED: ask the room page"})
    void what_no_longer_holds_is_said_in_words_of_its_own(String state, String word) {
        var answer =
                """
                {"sheet": "CDFG-HJKM-NPQR", "site": "Larkfield", "room": "r1", "roomName": "Room 1", "version": 2,
                 "patientGroup": null, "region": "Spine", "printedAt": "2026-03-02T08:00:00Z", "state": "%s",
                 "since": "2026-03-09T06:00:00Z", "until": null, "reviewOverdueSince": null, "versionInForce": 3,
                 "takenDownAt": null, "say": "It does not hold.", "nextStep": "Take it down."}"""
                        .formatted(state);
        try (var visit = SITE.visit(Screen.TOUCH)) {
            visit.page()
                    .route(
                            "**/api/v1/sheets/*",
                            route -> route.fulfill(new Route.FulfillOptions()
                                    .setContentType("application/json")
                                    .setBody(answer)));
            var page = visit.open("/sheets/CDFGHJKMNPQR");
            assertThat(page.locator(".verdict .word")).hasText(word);
            assertThat(page.locator(".verdict")).containsText("9 Mar 2026");
            assertThat(page.locator(".verdict")).not().containsText("CURRENT");
            visit.assertAccessible();
            visit.picture("sheet-" + state);
            dim(page);
            visit.assertAccessible();
        }
    }

    @Test
    void superseded_sheets_stand_first_until_they_are_noted() {
        var line =
                """
                {"sheet": "CDFG-HJKM-NPQR", "room": "r1", "version": 1, "digest": "sha256:0", "equipmentRevision": 1, "paper": "a4",
                 "patientGroup": null, "region": null, "printedAt": "2026-03-02T08:00:00Z", "printedBy": "A. Reader", "role": "lead",
                 "state": "superseded", "since": "2026-03-09T06:00:00Z", "takenDownAt": null, "takenDownBy": null}""";
        try (var visit = SITE.visit(Screen.TOUCH).as("lead")) {
            visit.page()
                    .route(
                            "**/api/v1/sheets",
                            route -> route.fulfill(new Route.FulfillOptions()
                                    .setContentType("application/json")
                                    .setBody("{\"toTakeDown\": [" + line + "], \"moreToTakeDown\": 41, \"sheets\": ["
                                            + line + "], \"moreSheets\": 7}")));
            var page = visit.open("/sheets");
            assertThat(page.locator("section").first()).containsText("42 sheets to look for");
            assertThat(page.locator("section").first()).containsText("the other 41 move up as these are noted");
            assertThat(page.locator("section").last()).containsText("7 older sheets are not listed here");
            assertThat(page.locator("section").first().locator(".mark")).hasText("superseded");
            visit.assertAccessible();
            visit.picture("sheets-to-take-down");
        }
    }
}
