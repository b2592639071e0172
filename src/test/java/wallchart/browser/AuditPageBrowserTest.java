package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The ledger as a lead radiographer or a medical physicist looks at it. */
class AuditPageBrowserTest {

    private static final String PAST =
            "/audit#view=past&room=r1&bodyPart=KNEE&projection=ap&support=table-bucky&thickness=12.4";

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static Locator heading(Page page, String name) {
        return page.getByRole(
                AriaRole.HEADING, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @ParameterizedTest
    @EnumSource
    void each_part_is_accessible_in_both_themes(Screen screen) {
        try (var visit = SITE.visit(screen).as("physicist")) {
            var page = visit.open("/audit");
            look(visit, "audit-line", screen, page.getByText("Sound.", new Page.GetByTextOptions().setExact(true)));
            visit.open("/audit#event=21");
            look(visit, "audit-event", screen, page.getByText("Amended rows").first());
            visit.open("/audit#event=23");
            look(
                    visit,
                    "audit-equipment",
                    screen,
                    page.getByText("Fields that differ").first());
            visit.open(PAST);
            look(visit, "audit-past", screen, page.getByText("It would have been told"));
            visit.open("/audit#view=reviews");
            look(visit, "audit-reviews", screen, heading(page, "Earlier reviews"));
            visit.assertClean();
        }
    }

    private static void look(Visit visit, String name, Screen screen, Locator there) {
        assertThat(there).isVisible();
        assertThat(visit.page().getByText("Sound.", new Page.GetByTextOptions().setExact(true)))
                .isVisible();
        visit.assertAccessible();
        visit.picture(name + "-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
        visit.assertAccessible();
        visit.picture(name + "-dim-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
    }
}
