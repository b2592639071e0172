package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The start page, signing in, and that the watch over all pages has teeth. */
class StartPageBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    @ParameterizedTest
    @EnumSource
    void the_rooms_are_listed_for_whoever_signs_in(Screen screen) {
        try (var visit = SITE.visit(screen)) {
            var page = visit.open("/");
            page.getByText("Sign in").first().click();
            page.getByLabel("Name").fill("lead");
            page.getByLabel("Password").fill("demo-lead");
            visit.assertAccessible();
            page.locator("dialog button.first").click();
            assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ROW))
                    .hasCount(4);
            assertThat(page.locator(".masthead")).containsText("INVENTED. NOT FOR PATIENTS.");
            visit.assertAccessible();
            visit.picture("start-" + screen.name().toLowerCase(java.util.Locale.ROOT));
            visit.assertClean();
        }
    }

    @Test
    void a_wrong_password_is_said_and_the_name_stays() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/");
            page.getByText("Sign in").first().click();
            page.getByLabel("Name").fill("lead");
            page.getByLabel("Password").fill("wrong");
            page.locator("dialog button.first").click();
            assertThat(page.getByText("Not signed in.")).isVisible();
            assertThat(page.getByLabel("Name")).hasValue("lead");
        }
    }

    @Test
    void a_script_written_into_a_page_does_not_run_and_is_noticed() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/");
            page.evaluate("document.body.insertAdjacentHTML('beforeend', '<p style=\"color: red\">x</p>')");
            page.evaluate("document.body.append(Object.assign(document.createElement('script'), "
                    + "{ textContent: 'window.ran = true' }))");
            assertThat(page.evaluate("window.ran === true")).isEqualTo(false);
            assertThatThrownBy(visit::assertClean).hasMessageContaining("Content Security Policy");
        }
    }

    @Test
    void a_field_without_a_label_is_noticed() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = visit.open("/");
            visit.assertAccessible();
            page.evaluate("document.querySelector('main').append(document.createElement('input'))");
            assertThatThrownBy(visit::assertAccessible).hasMessageContaining("label");
        }
    }
}
