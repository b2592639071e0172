package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What becomes of a change: proposed, concurred with, signed, returned, declined, by different people at their own screens. */
class ChangeLifeBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator panel(Page page, String title) {
        return page.locator("form.panel").filter(new Locator.FilterOptions().setHasText(title));
    }

    private static Locator thread(Page page) {
        return page.locator(".thread li");
    }

    private static void sign(Page page, String meaning, String password) {
        var form = panel(page, "Sign the change");
        form.getByLabel("What your signature states").fill(meaning);
        form.getByLabel("Your password again").fill(password);
        button(page, "Sign").click();
    }

    /** A change of one row, handed in by the radiographer. */
    private static int submitted(String room, String title, String row, String field, Object value) {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var desk = new ChangeDesk(visit.open("/changes"));
            int change = desk.open(room, title);
            desk.write(change, room, row, field, value);
            desk.step(change, "submit");
            return change;
        }
    }

    @Test
    void three_people_bring_a_change_into_force() {
        try (var author = SITE.visit(Screen.SMALL).as("radiographer");
                var physicist = SITE.visit(Screen.WIDE).as("physicist");
                var lead = SITE.visit(Screen.SMALL).as("lead")) {
            var page = author.open("/changes");
            page.getByText("New change", new Page.GetByTextOptions().setExact(true))
                    .click();
            var form = page.locator("form").filter(new Locator.FilterOptions().setHasText("Open the change"));
            form.getByLabel("Room").selectOption("r2");
            form.getByLabel("Title").fill("PA skulls with more mAs");
            form.getByLabel("Reason").fill("Eight weeks of exposure indices a step under target");
            author.assertAccessible();
            author.picture("changes-new");
            button(page, "Open the change").click();
            page.waitForURL("**/changes/*");
            var sheet = new SheetOfRows(page).bring("skull pa");
            assertThat(page.locator("section[aria-labelledby=next]")).containsText("Nothing is edited yet.");
            sheet.enter("17 to 19 cm", "mAs", "30");
            sheet.assertSaved();
            assertThat(page.locator(".impact")).containsText("needs the physicist");
            button(page, "Hand in for signature").click();
            assertThat(page.locator("#said")).containsText("Handed in.");
            assertThat(page.locator("#said")).isFocused();
            var address = page.url().substring(SITE.address().length());

            var signer = lead.open("/changes");
            assertThat(signer.getByLabel("Waits for others")).containsText("PA skulls with more mAs");
            lead.open(address);
            assertThat(signer.getByText("A medical physicist has to concur first."))
                    .isVisible();
            assertThat(button(signer, "Sign")).isDisabled();
            lead.assertAccessible();

            var other = physicist.open("/changes");
            assertThat(other.getByLabel("Waits for you")).containsText("waits for your concurrence");
            other.getByText("PA skulls with more mAs").click();
            var concur = panel(other, "Concur with the impact");
            concur.getByLabel("Your password again").fill("wrong");
            button(other, "Concur").click();
            assertThat(other.locator("#trouble")).containsText("password");
            physicist.assertAccessible();
            concur.getByLabel("Your password again").fill("demo-physicist");
            button(other, "Concur").click();
            assertThat(other.locator("#said")).containsText("Your concurrence is recorded.");
            physicist.picture("change-concurred");

            lead.open(address);
            assertThat(signer.getByText("concurred")).not().hasCount(0);
            sign(signer, "Phantom images read by two", "wrong");
            assertThat(signer.locator("#trouble")).containsText("password");
            assertThat(signer.getByLabel("What your signature states")).hasValue("Phantom images read by two");
            assertThat(signer.getByLabel("Your password again")).hasValue("");
            sign(signer, "Phantom images read by two", "demo-lead");
            assertThat(signer.locator("#said")).containsText("Signed.");
            assertThat(signer.getByText("See the chart")).hasAttribute("href", "/charts/r2");
            assertThat(thread(signer).last()).containsText("signed it: version");
            assertThat(thread(signer).last()).containsText("Phantom images read by two");
            lead.assertAccessible();
            lead.picture("change-signed");

            author.open("/changes");
            assertThat(page.getByLabel("Closed")).containsText("PA skulls with more mAs");
            author.assertClean();
            physicist.assertClean();
            lead.assertClean();
        }
    }

    @Test
    void the_author_cannot_sign_their_own_change() {
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/changes");
            var desk = new ChangeDesk(page);
            int change = desk.open("r3", "Forearm notes by the lead");
            desk.write(change, "r3", "FOREARM/ap/infant/tabletop/1-3", "notes", "Both joints on one image");
            desk.step(change, "submit");
            visit.open("/changes/" + change);
            assertThat(page.getByText("You are its author: another lead radiographer has to sign."))
                    .isVisible();
            assertThat(button(page, "Sign")).isDisabled();
            assertThat(page.getByText("Or give it back")).hasCount(0);
            visit.assertClean();
        }
    }

    @Test
    void an_impact_that_moved_is_shown_before_anybody_signs_it() {
        int first = submitted("r3", "Note on forearms", "FOREARM/ap/adult/tabletop/4-6", "notes", "Both joints");
        int second = submitted("r3", "Note on wrists", "WRIST/pa/adult/tabletop/2-3", "notes", "Fingers bent");
        try (var visit = SITE.visit(Screen.SMALL).as("lead")) {
            var page = visit.open("/changes/" + first);
            assertThat(button(page, "Sign")).isEnabled();
            var rival = visit.another();
            rival.navigate("/changes/" + second);
            sign(rival, "Approved", "demo-lead");
            assertThat(rival.locator("#said")).containsText("Signed.");

            sign(page, "Approved, seen on the phantom", "demo-lead");
            assertThat(page.locator("#trouble")).containsText("The impact moved.");
            assertThat(page.locator("#trouble")).isFocused();
            assertThat(new ChangeDesk(page).state(first)).isEqualTo("submitted");
            assertThat(page.getByLabel("What your signature states")).hasValue("Approved, seen on the phantom");
            visit.assertAccessible();
            visit.picture("change-impact-moved");
            sign(page, "Approved, seen again", "demo-lead");
            assertThat(page.locator("#said")).containsText("Signed.");
            visit.assertClean();
        }
    }

    @Test
    void a_change_is_returned_with_a_reason_mended_and_declined() {
        int change = submitted("r1", "Elbows", "KNEE/ap/adult/table-bucky/13-16", "notes", "Weight off the leg");
        try (var lead = SITE.visit(Screen.SMALL).as("lead");
                var author = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = lead.open("/changes/" + change);
            var form = panel(page, "Or give it back");
            form.getByLabel("Reason").fill("short");
            button(page, "Return to its author").click();
            assertThat(page.locator("#said")).isEmpty();
            form.getByLabel("Reason").fill("Say which projection it is about");
            page.reload();
            assertThat(form.getByLabel("Reason")).hasValue("Say which projection it is about");
            button(page, "Return to its author").click();
            assertThat(page.locator("#said")).containsText("Returned to its author.");

            var own = author.open("/changes");
            assertThat(own.getByLabel("Waits for you")).containsText("returned to you");
            author.open("/changes/" + change);
            assertThat(own.getByText("Returned.")).isVisible();
            assertThat(thread(own).last()).containsText("Say which projection it is about");
            button(own, "Edit title and reason").click();
            own.getByLabel("Title").fill("Knees ap");
            button(own, "Save").click();
            assertThat(own.locator("h1")).hasText("Knees ap");
            button(own, "Hand in for signature").click();
            assertThat(own.locator("#said")).containsText("Handed in.");

            page.reload();
            form.getByLabel("Reason").fill("Not with this detector, sorry");
            button(page, "Decline for good").click();
            assertThat(page.locator("#said")).containsText("Declined.");
            lead.assertClean();
            author.assertClean();
        }
    }

    @Test
    void rows_that_others_changed_are_named_and_taken_up() {
        try (var author = SITE.visit(Screen.SMALL).as("radiographer");
                var lead = SITE.visit(Screen.SMALL).as("lead")) {
            var page = author.open("/changes");
            var desk = new ChangeDesk(page);
            int mine = desk.open("r3", "Wrist notes");
            desk.write(mine, "r3", "WRIST/pa/adult/tabletop/3-5", "notes", "Mine");
            int theirs = submitted("r3", "Wrist notes of others", "WRIST/pa/adult/tabletop/3-5", "notes", "Theirs");
            var signer = lead.open("/changes/" + theirs);
            sign(signer, "Approved", "demo-lead");
            assertThat(signer.locator("#said")).containsText("Signed.");

            author.open("/changes/" + mine);
            assertThat(page.getByText("Others changed the same rows.")).isVisible();
            author.assertAccessible();
            author.picture("change-conflict");
            page.getByText("Take up version").click();
            assertThat(page.locator("#said")).containsText("The newest version is the base now.");
            var sheet = new SheetOfRows(page);
            sheet.enter("3 to 5 cm", "notes", "Both");
            sheet.assertSaved();
            button(page, "Hand in for signature").click();
            assertThat(page.locator("#said")).containsText("Handed in.");
            author.assertClean();
        }
    }

    @Test
    void the_physicist_records_the_second_review_of_a_fast_track() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/changes");
            assertThat(page.getByLabel("Waits for you")).containsText("second review due");
            page.getByText("Bedside chest of large adults was too low").click();
            var form = panel(page, "Record the second review");
            form.getByLabel("What you found").fill("Exposure indices are on target");
            form.getByLabel("Your password again").fill("demo-physicist");
            visit.assertAccessible();
            button(page, "Record").click();
            assertThat(page.locator("#said")).containsText("The second review is recorded.");
            assertThat(page.getByText("“Exposure indices are on target”")).isVisible();
            visit.assertClean();
        }
    }

    @Test
    void an_earlier_version_is_brought_back_and_the_change_withdrawn() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/changes#room=r3");
            page.getByText("Bring an earlier version back").click();
            var form = page.locator("form").filter(new Locator.FilterOptions().setHasText("Prepare the change"));
            form.getByLabel("Version to bring back").selectOption("1");
            form.getByLabel("Reason").fill("The new receptor went back to its maker");
            button(page, "Prepare the change").click();
            page.waitForURL("**/changes/*");
            assertThat(page.getByText("brings a version back")).isVisible();
            assertThat(page.locator("#sheet")).hasCount(0);
            assertThat(page.locator(".impact tbody tr").first()).isVisible();
            button(page, "Withdraw the change …").click();
            assertThat(button(page, "Yes, withdraw it")).isFocused();
            button(page, "Yes, withdraw it").click();
            assertThat(page.locator("#said")).containsText("Withdrawn.");
            visit.assertClean();
        }
    }

    @Test
    void bands_are_drafted_from_a_proven_row_and_opened_as_a_change() {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/changes#room=r1");
            page.getByText("Draft a set of bands").click();
            var form = page.locator("form").filter(new Locator.FilterOptions().setHasText("Proven row"));
            form.getByLabel("Proven row").selectOption("KNEE/ap/adult/tabletop/8-10");
            form.getByLabel("From, cm").fill("6,5");
            form.getByLabel("to under, cm").fill("14");
            form.getByLabel("Width of a band").fill("2");
            form.getByText("Look at it first").click();
            assertThat(page.locator("#plans-said")).containsText("/fromCm");
            form.getByLabel("From, cm").fill("6");
            form.getByText("Look at it first").click();
            assertThat(page.getByText("What would be proposed")).isVisible();
            assertThat(form.locator(".preview tbody tr")).hasCount(4);
            visit.assertAccessible();
            page.screenshot(new Page.ScreenshotOptions()
                    .setFullPage(true)
                    .setPath(java.nio.file.Path.of("target", "screens", "changes-plan.png")));
            form.getByLabel("Title").fill("Knees in bands of 2 cm");
            form.getByLabel("Reason").fill("One proven technique, finer bands");
            form.getByText("Open it as a change").click();
            page.waitForURL("**/changes/*");
            assertThat(page.locator("h1")).hasText("Knees in bands of 2 cm");
            visit.assertClean();
        }
    }

    @Test
    void rows_of_another_room_are_looked_at_before_they_are_brought() {
        try (var visit = SITE.visit(Screen.SMALL).as("radiographer")) {
            var page = visit.open("/changes");
            page.getByText("Bring rows of another room").click();
            var form = page.locator("form").filter(new Locator.FilterOptions().setHasText("Version there"));
            form.getByLabel("To room").selectOption("r2");
            form.getByLabel("From room").selectOption("r1");
            form.getByLabel("Body part").selectOption("KNEE");
            form.getByLabel("Rows").selectOption("all");
            form.getByText("Look at it first").click();
            assertThat(form.locator(".preview tbody tr").first()).isVisible();
            visit.assertAccessible();
            visit.assertClean();
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_screen_and_theme_shows_the_queue_and_a_change_to_sign(Screen screen) {
        var name = screen.name().toLowerCase(Locale.ROOT);
        try (var visit = SITE.visit(screen).as("lead")) {
            var page = visit.open("/changes");
            assertThat(page.getByLabel("Closed").locator("tbody tr").first()).isVisible();
            visit.assertAccessible();
            visit.picture("changes-" + name);
            visit.open("/changes/6");
            assertThat(page.locator(".impact tbody tr").first()).isVisible();
            assertThat(thread(page).first()).isVisible();
            visit.assertAccessible();
            visit.picture("change-" + name);
            page.getByText("Dim").click();
            visit.assertAccessible();
            visit.open("/changes");
            assertThat(page.getByLabel("Closed").locator("tbody tr").first()).isVisible();
            visit.assertAccessible();
            visit.assertClean();
        }
    }
}
