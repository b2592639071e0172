package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;

/** How tests find something on a page: as somebody who reads it, or who has a keyboard only. */
final class Find {

    private static final int MOST_TABS = 80;

    private Find() {}

    static Locator heading(Page page, String name) {
        return page.getByRole(
                AriaRole.HEADING, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    static Locator text(Page page, String exactly) {
        return page.getByText(exactly, new Page.GetByTextOptions().setExact(true));
    }

    /** Goes on by the tabulator until something with these words, or this label, has the focus. */
    static void byTabulator(Page page, String words) {
        by("Tab", page, words);
    }

    /** The same backwards. */
    static void byTabulatorBack(Page page, String words) {
        by("Shift+Tab", page, words);
    }

    private static void by(String key, Page page, String words) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press(key);
            var focused = page.evaluate("(document.activeElement.labels?.[0] ?? document.activeElement).innerText"
                    + " + '|' + (document.activeElement.ariaLabel ?? '')");
            if (String.valueOf(focused).strip().replaceAll("\\s+", " ").contains(words)) {
                return;
            }
        }
        throw new AssertionError("no way to \"" + words + "\" by the tabulator");
    }

    /** A page in both themes: accessible, and a picture of each. */
    static void lookAt(Visit visit, String name, Screen screen, Locator there) {
        assertThat(there).isVisible();
        visit.assertAccessible();
        visit.picture(name + "-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
        visit.assertAccessible();
        visit.picture(name + "-dim-" + screen.name().toLowerCase(Locale.ROOT));
        button(visit.page(), "Dim").click();
    }
}
