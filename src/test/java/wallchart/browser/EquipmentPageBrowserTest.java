package wallchart.browser;

import static wallchart.browser.Find.button;
import static wallchart.browser.Find.heading;
import static wallchart.browser.Find.lookAt;

import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A room's equipment, as people read it and as a medical physicist enters what was measured. */
class EquipmentPageBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @ParameterizedTest
    @EnumSource
    void each_part_is_accessible_in_both_themes(Screen screen) {
        try (var visit = SITE.visit(screen).as("physicist")) {
            var page = visit.open("/equipment/r1");
            lookAt(visit, "equipment-tube", screen, page.locator(".u-over").first());
            visit.open("/equipment/r1#view=room");
            lookAt(visit, "equipment-room", screen, heading(page, "Supports"));
            visit.open("/equipment/r2#view=history");
            button(page, "Show what revision 2 did").click();
            lookAt(visit, "equipment-history", screen, page.getByText("Rows to look at: 301."));
            visit.open("/equipment/r1#view=due");
            lookAt(visit, "equipment-due", screen, heading(page, "Dates due, all rooms"));
            visit.open("/equipment/r1#view=grid&grid=g10-f110");
            lookAt(visit, "equipment-grid", screen, heading(page, "Grid g10-f110, 10:1"));
            visit.open("/equipment/r3#view=measure");
            lookAt(visit, "equipment-measure", screen, heading(page, "Enter a measured output"));
            visit.assertClean();
        }
    }
}
