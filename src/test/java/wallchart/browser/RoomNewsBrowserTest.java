package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A room page that stands open while a version is signed, or the room is equipped anew, does not go on showing what held before. */
class RoomNewsBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static final String EQUIP =
            """
            async (reason) => {
              const api = await import('/pages/api.js');
              const before = await api.get('/rooms/r3/equipment');
              const document = { ...before.data.document, name: `${before.data.document.name}, ${reason}` };
              await api.put('/rooms/r3/equipment', { document, reason, confirmed: [] }, { ifMatch: before.etag });
            }""";

    @Test
    void a_version_that_comes_into_force_is_asked_at_once_and_the_answer_before_is_gone_meanwhile() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            var room = RoomPage.open(visit, "r2");
            room.type("ka12");
            assertThat(room.technique()).isVisible();
            assertThat(room.foot()).containsText("Chart version 4");
            NextVersion.sign(SITE, "r2", "Signed while somebody looks at the answer");
            List<Route> held = new CopyOnWriteArrayList<>();
            visit.page().route("**/technique?*", held::add);
            visit.page().clock().runFor(11_000);
            visit.page().waitForCondition(() -> !held.isEmpty());
            assertThat(room.technique()).hasCount(0);
            assertThat(room.page().locator("#news")).containsText("Chart version 5 came into force");
            visit.page().unrouteAll();
            held.forEach(Route::resume);
            assertThat(room.technique()).isVisible();
            assertThat(room.foot()).containsText("Chart version 5");
            assertThat(room.page().locator("#news")).containsText("asked again. As before: ");
            visit.assertAccessible();
            visit.picture("room-version-came");
            room.type("+");
            assertThat(room.technique()).isVisible();
            assertThat(room.page().locator("#news")).isEmpty();
        }
    }

    @Test
    void other_equipment_is_asked_of_at_once_also_where_nothing_could_be_answered() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            visit.page().clock().install();
            var room = RoomPage.open(visit, "r3");
            room.type("cp59");
            assertThat(room.refusal()).isVisible();
            try (var physicist = SITE.visit(Screen.SMALL).as("physicist")) {
                physicist.open("/").evaluate(EQUIP, "a plate at the door");
            }
            visit.page().clock().runFor(11_000);
            assertThat(room.page().locator("#news")).containsText("The equipment of this room changed asked again.");
            assertThat(room.refusal()).isVisible();
        }
    }
}
