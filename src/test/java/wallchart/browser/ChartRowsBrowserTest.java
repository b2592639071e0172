package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The chart page: versions and their rows. */
class ChartRowsBrowserTest {

    private static final String KNEE = "KNEE/ap/adult/table-bucky/10-13";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @BeforeAll
    static void wait_longer_on_a_busy_machine() {
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
    }

    private static void hasChecked(Page page) {
        assertThat(page.locator("p.checks a")).isVisible();
    }

    @ParameterizedTest
    @EnumSource
    void the_version_in_force_is_shown_with_its_rows_in_both_themes(Screen screen) {
        try (var visit = SITE.visit(screen).as("lead")) {
            var page = visit.open("/charts/r1");
            hasChecked(page);
            assertThat(page.locator("h1")).hasText("Chart of Room 1, bucky room");
            assertThat(page.locator("#version-title")).containsText("Version 2");
            assertThat(page.locator(".head .mark")).hasText("in force");
            visit.picture("chart-" + screen.name().toLowerCase(Locale.ROOT));
            page.getByLabel("Words in a row").fill("pelvis ap"); // axe takes half a minute for all rows
            page.locator("tr[data-row] .opener").nth(1).click();
            page.locator(".choice summary").click();
            page.getByLabel("Notes").check();
            visit.assertAccessible();
            page.locator(".masthead button[aria-pressed]").click();
            visit.assertAccessible();
            visit.picture("chart-dim-" + screen.name().toLowerCase(Locale.ROOT));
            visit.assertClean();
        }
    }

    /** The interface's own answer beside what stands on the screen. */
    @Test
    @SuppressWarnings("unchecked")
    void every_row_on_the_screen_reads_as_the_interface_has_it() {
        try (var visit = SITE.visit(Screen.WIDE).as("radiographer")) {
            var page = visit.open("/charts/r1#version=1");
            assertThat(page.locator("#how-many")).hasText("All 466 rows");
            var shown = (Map<String, Map<String, String>>)
                    page.evaluate(
                            """
                    () => Object.fromEntries([...document.querySelectorAll('tr[data-row]')].map((line) => [line.dataset.row,
                      Object.fromEntries([...line.querySelectorAll('td[data-name]')].map((cell) => [cell.dataset.name, cell.textContent]))]))
                    """);
            var rows = (List<Map<String, Object>>)
                    page.evaluate("fetch('/api/v1/charts/r1/versions/1/rows').then((answer) => answer.json())"
                            + ".then((content) => content.rows)");
            assertThat(shown).hasSameSizeAs(rows).hasSize(466);
            for (var row : rows) {
                var cells = shown.get(row.get("key"));
                var band = (List<Object>) row.get("bandCm");
                assertThat(cells)
                        .as("%s", row.get("key"))
                        .containsEntry("kV", row.get("kV").toString())
                        .containsEntry("sidCm", row.get("sidCm").toString())
                        .containsEntry("grid", row.get("grid").toString())
                        .containsEntry("focalSpot", row.get("focalSpot").toString())
                        .containsEntry("support", row.get("support").toString().replace('-', ' '))
                        .containsEntry("band", band.get(0) + " to " + band.get(1));
                var aec = (Map<String, Object>) row.get("aec");
                assertThat(cells.get("mAs"))
                        .as("%s", row.get("key"))
                        .endsWith(aec == null ? row.get("mAs").toString() : "back-up " + aec.get("backupMAs") + " mAs");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "r1, 1, superseded, 466",
        "r1, 2, in force, 469",
        "r1, 3, scheduled, 469",
        "r2, 1, superseded, 296",
        "r2, 4, in force, 296",
        "r3, 3, in force, 191"
    })
    void each_version_of_each_room_says_what_it_is(String room, int version, String state, int rows) {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/charts/" + room + "#version=" + version);
            assertThat(page.locator(".head .mark")).hasText(state);
            assertThat(page.locator("#how-many")).containsText(Pattern.compile("^All [0-9]+ rows$"));
            assertThat(page.locator("tr[data-row]")).hasCount(count(page, room, version));
            if (room.equals("r1")) {
                assertThat(page.locator("tr[data-row]")).hasCount(rows);
            }
            hasChecked(page);
            visit.assertClean();
        }
    }

    private static int count(Page page, String room, int version) {
        return (int) page.evaluate("fetch('/api/v1/charts/" + room + "/versions/" + version
                + "').then((answer) => answer.json()).then((version) => version.rows)");
    }

    @Test
    void rows_are_found_by_words_patients_support_and_findings() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r1#version=2");
            hasChecked(page);
            page.getByLabel("Words in a row").fill("knee ap");
            assertThat(page.locator("#how-many")).containsText(" of 469 rows");
            assertThat(page.locator("tr[data-row] .opener").first()).containsText("Knee");
            page.locator("#filter-support").selectOption("table-bucky");
            assertThat(page.locator("tr[data-row] td[data-name=support]").first())
                    .hasText("table bucky");
            page.getByLabel("Words in a row").fill("nothing reads like this");
            assertThat(page.getByText("No row is like that")).isVisible();
            assertThat(page.getByLabel("Words in a row")).isFocused();
            page.getByText("Clear the filters").click();
            page.getByLabel("Only with findings").check();
            assertThat(page.locator("#how-many")).hasText("8 of 469 rows");
            assertThat(page.locator("tr[data-row] .mark").first()).isVisible();
        }
    }

    @Test
    void a_heading_sorts_upwards_then_downwards_then_as_the_chart_has_it() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r1#version=2");
            page.getByLabel("Under their region").uncheck();
            var first = page.locator("tr[data-row] td[data-name=kV]").first();
            var chartsOwn = first.innerText();
            var heading = page.locator("thead").getByRole(AriaRole.BUTTON, named("kV"));
            heading.click();
            assertThat(page.locator("th[aria-sort=ascending]")).containsText("kV");
            var kV = page.locator("tr[data-row] td[data-name=kV]").allInnerTexts().stream()
                    .map(Integer::valueOf)
                    .toList();
            assertThat(kV).isSorted().hasSize(469);
            heading.click();
            assertThat(page.locator("th[aria-sort=descending]")).containsText("kV");
            assertThat(first).hasText(kV.get(468).toString());
            heading.click();
            assertThat(page.locator("th[aria-sort]")).hasCount(0);
            assertThat(first).hasText(chartsOwn);
            assertThat(heading).isFocused();
        }
    }

    private static com.microsoft.playwright.Locator.GetByRoleOptions named(String name) {
        return new com.microsoft.playwright.Locator.GetByRoleOptions()
                .setName(name)
                .setExact(true);
    }

    @Test
    void columns_come_by_choice_and_stay_chosen_at_this_screen() {
        try (var visit = SITE.visit(Screen.WIDE).as("lead")) {
            var page = visit.open("/charts/r3");
            page.locator(".choice summary").click();
            page.getByLabel("Centring").check();
            assertThat(page.locator("td[data-name=centring]").first()).not().isEmpty();
            page.reload();
            assertThat(page.locator("td[data-name=centring]").first()).not().isEmpty();
            assertThat(page.locator("summary", new Page.LocatorOptions().setHasText("(1 shown)")))
                    .isVisible();
        }
    }

    @Test
    void a_link_leads_to_a_row_and_back_leads_back() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r1#version=1&row=" + KNEE);
            var row = page.locator("tr[data-row='" + KNEE + "'] .opener");
            assertThat(row).hasAttribute("aria-expanded", "true");
            assertThat(row).isFocused();
            assertThat(page.locator("tr.detail")).containsText("1 cm below the apex of the patella");
            assertThat(page.locator("tr.detail")).containsText("mAs doubles per 5 cm");
            hasChecked(page);
            assertThat(page.locator("tr.detail")).containsText("Rules of thumb here");
            page.locator("#version-picker").selectOption("3");
            assertThat(page.locator(".head .mark")).hasText("scheduled");
            page.getByText("Named adjustments (").click();
            assertThat(page.locator("#adjustments tbody tr")).not().hasCount(0);
            assertThat(page.locator("#part")).isFocused();
            page.goBack();
            page.goBack();
            assertThat(page.locator(".head .mark")).hasText("superseded");
            assertThat(page.locator("#version-picker")).hasValue("1");
            assertThat(row).isFocused();
            visit.assertClean();
        }
    }

    @Test
    void the_findings_of_a_version_lead_to_their_rows() {
        try (var visit = SITE.visit(Screen.WIDE).as("lead")) {
            var page = visit.open("/charts/r1#version=2&part=findings");
            hasChecked(page);
            assertThat(page.locator("ul.beside > li")).hasCount(8);
            assertThat(page.locator("ul.beside > li").first()).containsText("Caution.");
            visit.assertAccessible();
            visit.picture("chart-findings");
            page.locator("ul.beside a").first().click();
            assertThat(page.locator("tr.detail .tell.caution")).containsText("reference level");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/charts/r1#version=99|has no version 99",
                "/charts/r1#version=x|has no version x",
                "/charts/r1#version=2&row=KNEE/ap/adult/tabletop/1-2|has no row KNEE/ap/adult/tabletop/1-2",
                "/charts/r1#version=2&examination=SKULL/upside-down/adult/tabletop|has no rows of SKULL/upside-down",
                "/charts/r1#version=2&row=%3Cimg src=x onerror=alert(1)%3E|has no row <img src=x onerror=alert(1)>",
                "/charts/r9|room \"r9\" is not known",
                "/charts/r1#from=1&to=99|has no version 99"
            })
    void what_is_not_there_is_said(String address, String words) {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open(address);
            assertThat(page.locator("#chart .tell").first()).containsText(words);
            visit.assertAccessible();
            visit.assertClean();
        }
    }

    @Test
    void somebody_with_a_keyboard_alone_reads_a_row_and_its_curves_and_comes_back() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/charts/r1#version=2");
            hasChecked(page);
            tabTo(page, "#words");
            page.keyboard().type("pelvis ap");
            tabTo(page, "tr[data-row] .opener");
            page.keyboard().press("Enter");
            assertThat(page.locator("tr.detail")).isVisible();
            assertThat(page.locator("tr[data-row] .opener").first()).isFocused();
            tabTo(page, "tr.detail a");
            page.keyboard().press("Enter");
            assertThat(page.locator("h2#part")).containsText("Pelvis AP");
            tabTo(page, "#thickness");
            var before = page.locator("#reading").innerText();
            page.keyboard().press("ArrowRight");
            assertThat(page.locator("#reading")).not().hasText(before);
            assertThat(page.locator("#thickness"))
                    .hasAttribute("aria-valuetext", Pattern.compile("Thickness: .* Set by the console: .* kV.*"));
            page.goBack();
            assertThat(page.locator("#words")).hasValue("pelvis ap");
            visit.assertClean();
        }
    }

    /** As often as somebody would press the key before they gave up. */
    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 60; i++) {
            page.keyboard().press("Tab");
            if ((boolean) page.evaluate("(one) => document.activeElement.matches(one)", selector)) {
                return;
            }
        }
        throw new AssertionError(selector + " is not reached with the Tab key on " + page.url());
    }

    @Test
    void an_administrator_proposes_nothing_and_a_lead_does() {
        try (var visit = SITE.visit(Screen.SMALL).as("admin")) {
            var page = visit.open("/charts/r2");
            hasChecked(page);
            assertThat(page.getByText("Propose a change")).hasCount(0);
            assertThat(page.getByText("Bring this version back")).hasCount(0);
        }
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r2");
            assertThat(page.getByText("Propose a change")).hasAttribute("href", "/changes#new&room=r2");
            assertThat(page.getByText("Print a wall sheet")).hasAttribute("href", "/sheets#room=r2");
        }
    }

    @Test
    void an_earlier_version_is_brought_back_by_a_change_with_a_reason() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r3#version=1");
            page.getByText("Bring this version back").click();
            assertThat(page.locator("#bring-back textarea")).isFocused();
            visit.assertAccessible();
            page.locator("#bring-back").getByText("Leave it").click();
            assertThat(page.locator("#bring-back")).hasCount(0);
            assertThat(page.getByText("Bring this version back")).isFocused();
            page.getByText("Bring this version back").click();
            page.locator("#bring-back textarea").fill("          "); // blanks are no reason
            page.getByText("Prepare the change").click();
            assertThat(page.locator("#bring-back [role=alert]")).containsText("That did not work.");
            assertThat(page.locator("#bring-back textarea")).isFocused();
            page.locator("#bring-back textarea").fill("Beds of the new ward measure as they did before");
            page.getByText("Prepare the change").click();
            page.waitForURL(Pattern.compile(".*/changes/[0-9]+$"));
        }
    }

    @Test
    void another_room_is_opened_from_the_list() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/charts/r1");
            page.locator("#room-picker").selectOption("r3");
            page.getByText("Open this room").click();
            assertThat(page.locator("h1")).hasText("Chart of Mobile unit 3, wards and children's unit");
            assertThat(Set.of(page.url())).containsExactly(SITE.address() + "/charts/r3");
        }
    }
}
