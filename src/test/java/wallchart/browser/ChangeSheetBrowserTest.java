package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An author edits rows as in a spreadsheet. */
class ChangeSheetBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String FIRST = "17 to 19 cm";
    private static final String SECOND = "19 to 21 cm";
    private static final String THIRD = "21 to 23 cm";

    private int change;
    private ChangeDesk desk;

    private static Visit author(Screen screen) {
        return SITE.visit(screen).as("radiographer");
    }

    private SheetOfRows skulls(Visit visit) {
        desk = new ChangeDesk(visit.open("/changes"));
        change = desk.open("r2", "Skulls, test of the table");
        return SheetOfRows.of(visit.page(), change, "skull pa");
    }

    private static void press(Page page, String... keys) {
        for (var key : keys) {
            page.keyboard().press(key);
        }
    }

    @Test
    void the_keyboard_alone_edits_rows() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            page.getByLabel("Bring rows").focus();
            for (int i = 0; i < 20 && !(Boolean) page.evaluate("!!document.activeElement.closest('#sheet td')"); i++) {
                press(page, "Tab");
            }
            assertThat(sheet.cell(FIRST, "bandFromCm")).isFocused();
            press(page, "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
            assertThat(sheet.cell(FIRST, "mAs")).isFocused();
            press(page, "2", "5", "Enter");
            assertThat(sheet.cell(SECOND, "mAs")).isFocused();
            press(page, "F2", "Backspace", "Backspace", "3", "0", "Tab");
            assertThat(sheet.cell(SECOND, "focalSpot")).isFocused();
            press(page, "x", "Escape");
            assertThat(sheet.cell(SECOND, "focalSpot")).hasText("large");
            press(page, "Shift+Tab", "ArrowDown", "4", "0", "ArrowUp");
            assertThat(sheet.cell(SECOND, "mAs")).isFocused();
            sheet.assertSaved();
            assertThat(desk.has(change, ChangeDesk.SKULL + "17-19", "mAs")).contains("25");
            assertThat(desk.has(change, ChangeDesk.SKULL + "19-21", "mAs")).contains("30");
            assertThat(desk.has(change, ChangeDesk.SKULL + "21-23", "mAs")).contains("40");
            assertThat(sheet.cell(FIRST, "mAs")).containsText("was");
            press(page, "Home");
            assertThat(sheet.cell(SECOND, "bandFromCm")).isFocused();
            press(page, "Control+End");
            assertThat(sheet.cell(THIRD, "notes")).isFocused();
            press(page, "Escape");
            assertThat(page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Add a row …")))
                    .isFocused();
            visit.assertClean();
        }
    }

    @Test
    void a_block_from_a_spreadsheet_is_pasted_and_copied() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            visit.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
            sheet.cell(FIRST, "kV").click();
            paste(page, "74\t25\r\n76\t30\r\n78\t40\r\n");
            sheet.assertSaved();
            assertThat(desk.has(change, ChangeDesk.SKULL + "21-23", "kV")).contains("78");
            assertThat(desk.has(change, ChangeDesk.SKULL + "21-23", "mAs")).contains("40");
            press(page, "Shift+ArrowDown", "Shift+ArrowRight", "Control+c");
            assertThat((String) page.evaluate("navigator.clipboard.readText()")).isEqualTo("74\t25\n76\t30");
            visit.assertClean();
        }
    }

    @Test
    void the_last_edit_is_taken_back_and_entered_again() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            visit.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
            sheet.enter(FIRST, "mAs", "25");
            sheet.assertSaved();
            sheet.cell(FIRST, "kV").click();
            paste(page, "74\t28\r\n76\t30\r\n");
            sheet.assertSaved();
            press(page, "ArrowDown", "Control+z");
            assertThat(sheet.cell(FIRST, "kV")).isFocused();
            sheet.assertSaved();
            assertThat(desk.has(change, ChangeDesk.SKULL + "17-19", "mAs")).contains("25");
            assertThat(desk.has(change, ChangeDesk.SKULL + "19-21", "mAs"))
                    .as("the row is as in the chart again")
                    .isEmpty();
            press(page, "Control+y");
            sheet.assertSaved();
            assertThat(desk.has(change, ChangeDesk.SKULL + "17-19", "mAs")).contains("28");
            assertThat(desk.has(change, ChangeDesk.SKULL + "19-21", "kV")).contains("76");
            press(page, "Control+z", "Control+z");
            sheet.assertSaved();
            assertThat(desk.edits(change)).isEmpty();
            press(page, "Control+z");
            assertThat(page.locator("#refusal")).containsText("There is no edit to take back");
            visit.assertClean();
        }
    }

    @Test
    void a_block_that_does_not_fit_or_has_decimal_commas_is_refused_whole() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            visit.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
            sheet.cell(FIRST, "kV").click();
            paste(page, "74\t25\n76\t12,5\n");
            assertThat(page.locator("#refusal"))
                    .containsText("mAs \"12,5\" has a decimal comma: write a decimal point");
            visit.assertAccessible();
            sheet.cell(SECOND, "kV").click();
            paste(page, "74\n76\n78\n80");
            assertThat(page.locator("#refusal"))
                    .containsText("4 rows and 1 columns; from this cell on there are 2 rows");
            assertThat(desk.edits(change)).isEmpty();
            sheet.cell(FIRST, "notes").click();
            paste(page, "\"said \"\"so\"\",\nand more\"");
            sheet.assertSaved();
            assertThat(desk.has(change, ChangeDesk.SKULL + "17-19", "notes")).contains("said \"so\", and more");
            visit.assertClean();
        }
    }

    /** By the key, so that the browser itself hands over what another program copied. */
    private static void paste(Page page, String text) {
        page.evaluate("(text) => navigator.clipboard.writeText(text)", text);
        page.keyboard().press("Control+v");
    }

    @Test
    void what_cannot_be_read_or_blocks_is_said_beside_its_row() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            sheet.enter(FIRST, "mAs", "12,5");
            assertThat(page.locator(".beside").first()).containsText("mAs not taken.\"12,5\" is no number");
            assertThat(sheet.cell(FIRST, "mAs")).hasAttribute("aria-invalid", "true");
            assertThat(page.getByText("Hand in for signature")).isDisabled();
            assertThat(desk.edits(change)).isEmpty();
            visit.assertAccessible();
            sheet.enter(FIRST, "mAs", "12.5");
            sheet.assertSaved();
            sheet.enter(FIRST, "kV", "900");
            assertThat(page.locator(".beside").first())
                    .containsText("900 kV lies outside the generator of room r2, 40 to 125 kV");
            assertThat(page.locator("#next ~ *").first()).containsText("Blocking findings have to be mended first.");
            visit.picture("change-findings");
            sheet.enter(SECOND, "notes", "<img src=x onerror=alert(1)> ±");
            sheet.assertSaved();
            assertThat(sheet.cell(SECOND, "notes")).containsText("<img src=x onerror=alert(1)> ±");
            visit.assertClean();
        }
    }

    @Test
    void rows_are_withdrawn_split_added_and_put_back() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            sheet.cell(THIRD, "kV").click();
            page.getByText("Withdraw row").click();
            sheet.assertSaved();
            assertThat(desk.edits(change)).containsExactly("withdraw " + ChangeDesk.SKULL + "21-23");
            page.getByText("Undo edits").click();
            sheet.assertSaved();
            assertThat(desk.edits(change)).isEmpty();

            page.getByText("Split band …").click();
            page.getByLabel("At, cm").fill("25");
            page.locator("#row-dialog button.first").click();
            assertThat(page.locator("#row-dialog")).containsText("25 cm lies not inside the band from 21 to 23 cm");
            visit.assertAccessible();
            page.getByLabel("At, cm").fill("22");
            page.locator("#row-dialog button.first").click();
            sheet.assertSaved();
            assertThat(desk.edits(change))
                    .containsExactlyInAnyOrder(
                            "withdraw " + ChangeDesk.SKULL + "21-23",
                            "add " + ChangeDesk.SKULL + "21-22",
                            "add " + ChangeDesk.SKULL + "22-23");
            assertThat(desk.has(change, ChangeDesk.SKULL + "22-23", "referenceThicknessCm"))
                    .contains("22.5");

            sheet.cell(FIRST, "kV").click();
            page.getByText("Add a row like this …").click();
            page.getByLabel("Band from, cm").fill("17");
            page.getByLabel("to under, cm").fill("19");
            page.locator("#row-dialog button.first").click();
            assertThat(page.locator("#row-dialog")).containsText("There is a row Skull");
            visit.picture("change-add-row");
            page.getByLabel("Band from, cm").fill("15");
            page.getByLabel("to under, cm").fill("17");
            page.locator("#row-dialog button.first").click();
            sheet.assertSaved();
            assertThat(desk.edits(change)).contains("add " + ChangeDesk.SKULL + "15-17");
            assertThat(sheet.line("15 to 17 cm")).containsText("new row");
            visit.assertClean();
        }
    }

    @Test
    void another_band_moves_the_row_and_the_focus_goes_with_it() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            sheet.enter(FIRST, "bandFromCm", "16");
            sheet.assertSaved();
            assertThat(desk.edits(change))
                    .containsExactlyInAnyOrder(
                            "withdraw " + ChangeDesk.SKULL + "17-19", "add " + ChangeDesk.SKULL + "16-19");
            assertThat(sheet.line("16 to 19 cm")).containsText("saved");
            assertThat(sheet.line(FIRST)).containsText("withdrawn");
            sheet.enter(FIRST, "kV", "80");
            assertThat(visit.page().locator("#refusal")).containsText("withdrawn by this change");
            visit.assertClean();
        }
    }

    @Test
    void named_adjustments_are_edited_in_a_table_of_their_own() {
        try (var visit = author(Screen.SMALL)) {
            var sheet = skulls(visit);
            var page = visit.page();
            page.getByText("Edit the named adjustments").click();
            page.getByLabel("Multiplies mAs, plaster-dry").fill("1,8");
            press(page, "Tab");
            assertThat(page.locator("#named")).containsText("\"1,8\" is no number");
            visit.assertAccessible();
            page.getByLabel("Multiplies mAs, plaster-dry").fill("1.8");
            press(page, "Tab");
            sheet.assertSaved();
            assertThat(page.locator("section[aria-labelledby=impact]")).containsText("mAs x 1.8");
            page.getByText("Undo: as in the chart").click();
            sheet.assertSaved();
            assertThat(page.locator("#named")).containsText("As in the chart.");
            visit.assertClean();
        }
    }

    /** An inch is 2.54 cm by definition (international yard and pound agreement, 1959). */
    @Test
    void lengths_typed_in_inches_are_centimetres_and_what_is_not_touched_stays_exact() {
        try (var visit = author(Screen.SMALL)) {
            visit.open("/changes");
            var said = visit.page()
                    .evaluate(
                            """
                            async () => {
                              const { shown, spokenBack, textsOf } = await import('/pages/change/fields.js');
                              return [shown('sidCm', '101.6', 'in'), spokenBack('sidCm', '40', '101.6', 'in'), spokenBack('sidCm', '44', '101.6', 'in'),
                                shown('bandToCm', '17', 'in'), spokenBack('bandToCm', '6.7', '17', 'in'), spokenBack('bandToCm', '6.8', '17', 'in'),
                                spokenBack('bandToCm', '6,8', '17', 'in'), spokenBack('kV', '70', '66', 'in'), shown('sidCm', '101.6', 'cm')].join(' ');
                            }
                            """);
            assertThat(said).isEqualTo("40 101.6 111.76 6.7 17 17.27 6,8 70 101.6");
        }
    }

    @ParameterizedTest
    @EnumSource
    void it_can_be_used_on_every_screen_in_both_themes(Screen screen) {
        try (var visit = author(screen)) {
            var sheet = skulls(visit);
            var page = visit.page();
            sheet.enter(FIRST, "mAs", "25");
            sheet.enter(SECOND, "kV", "7,5");
            sheet.assertSays("not taken");
            page.getByText("Columns", new Page.GetByTextOptions().setExact(true))
                    .click();
            page.getByLabel("Positioning").check();
            assertThat(sheet.cell(FIRST, "centring")).isVisible();
            page.getByLabel("Positioning").uncheck();
            page.getByText("Columns", new Page.GetByTextOptions().setExact(true))
                    .click();
            visit.assertAccessible();
            visit.picture("change-edit-" + screen.name().toLowerCase(Locale.ROOT));
            page.getByText("Dim").click();
            visit.assertAccessible();
            visit.picture("change-edit-dim-" + screen.name().toLowerCase(Locale.ROOT));
            visit.assertClean();
        }
    }
}
