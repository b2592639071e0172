package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A room's equipment, as people read it and as a medical physicist enters what was measured. */
class EquipmentPageBrowserTest {

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
            var page = visit.open("/equipment/r1");
            look(visit, "equipment-tube", screen, page.locator(".u-over").first());
            visit.open("/equipment/r1#view=room");
            look(visit, "equipment-room", screen, heading(page, "Supports"));
            visit.open("/equipment/r2#view=history");
            button(page, "Show what revision 2 did").click();
            look(visit, "equipment-history", screen, page.getByText("Rows to look at: 301."));
            visit.open("/equipment/r1#view=due");
            look(visit, "equipment-due", screen, heading(page, "Dates due, all rooms"));
            visit.open("/equipment/r1#view=grid&grid=g10-f110");
            look(visit, "equipment-grid", screen, heading(page, "Grid g10-f110, 10:1"));
            visit.open("/equipment/r3#view=measure");
            look(visit, "equipment-measure", screen, heading(page, "Enter a measured output"));
            visit.assertClean();
        }
    }

    private static void look(Visit visit, String name, Screen screen, Locator there) {
        assertThat(there).isVisible();
        visit.assertAccessible();
        visit.picture(name + "-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
        visit.assertAccessible();
        visit.picture(name + "-dim-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
    }
}
