package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static wallchart.browser.Find.button;
import static wallchart.browser.Find.lookAt;
import static wallchart.browser.Find.text;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Somebody with the database's own password changes what was entered: the page says so, and says what to do. */
class AuditDoubtBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @Test
    void a_changed_event_puts_the_ledger_in_doubt_and_the_newest_one_stops_it() throws SQLException {
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            assertThat(text(visit.open("/audit"), "Sound.")).isVisible();
        }
        SITE.stop();
        asOwner(
                "DROP TRIGGER audit_event_append_only",
                "UPDATE audit_event SET reason = 'Nothing to see here' WHERE seq = 21",
                "UPDATE audit_event SET hash = REPEAT('a', 64) WHERE seq = (SELECT MAX(seq) FROM audit_event)");
        SITE.startAgain();
        try (var visit = SITE.visit(Screen.SMALL).as("physicist")) {
            var page = visit.open("/audit");
            assertThat(text(page, "In doubt from event 21 on.")).isVisible();
            assertThat(text(page, "What to do.")).isVisible();
            assertThat(page.locator(".proof .good")).hasCount(0);
            button(page, "Verify now").click(); // the keeper looks once a second
            lookAt(visit, "audit-doubt", Screen.SMALL, text(page, "Stopped."));
            visit.open("/audit#event=21");
            lookAt(visit, "audit-doubt-event", Screen.SMALL, text(page, "Its hash does not fit."));
            visit.open("/audit#event=20");
            assertThat(text(page, "Its hash fits")).isVisible();
            visit.assertClean();
        }
    }

    private static void asOwner(String... statements) throws SQLException {
        var file = Path.of("target", "browser", "AuditDoubtBrowserTest", "wallchart-demo")
                .toAbsolutePath();
        try (var connection = DriverManager.getConnection("jdbc:h2:file:" + file, "demo", "demo");
                var statement = connection.createStatement()) {
            for (var one : statements) {
                statement.execute(one);
            }
        }
    }
}
