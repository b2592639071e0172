package wallchart.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.List;
import java.util.regex.Pattern;

/** A room's workstation as somebody with or without gloves uses it. */
final class RoomPage implements AutoCloseable {

    /** A chart is worked out for the first who opens its room, perhaps beside other builds. */
    private static final double SLOW_MS = 60_000;

    private final Visit visit;
    private final Page page;

    static {
        com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout(15_000);
    }

    private RoomPage(Visit visit) {
        this.visit = visit;
        this.page = visit.page();
    }

    /** Opened with its token in the address; the chart is there. */
    static RoomPage open(DemoSite site, Screen screen, String room) {
        return open(site.visit(screen), room);
    }

    static RoomPage open(Visit visit, String room) {
        visit.open("/rooms/" + room + "#token=demo-" + room);
        var opened = new RoomPage(visit);
        assertThat(opened.page.locator(".regions"))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SLOW_MS));
        return opened;
    }

    /** A page that somebody else opened. */
    static RoomPage of(Visit visit) {
        return new RoomPage(visit);
    }

    Visit visit() {
        return visit;
    }

    Page page() {
        return page;
    }

    /** Key by key, wherever the focus is. */
    RoomPage type(String keys) {
        page.keyboard().type(keys);
        return this;
    }

    RoomPage press(String key) {
        page.keyboard().press(key);
        return this;
    }

    /** What is to be set under that name, such as "Tube voltage". */
    Locator set(String name) {
        return page.locator(".fact")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("dt", new Page.LocatorOptions().setHasText(Pattern.compile("^" + name)))))
                .locator("dd");
    }

    Locator button(String name) {
        return page.locator("button").filter(new Locator.FilterOptions().setHasText(name));
    }

    Locator options() {
        return page.locator("[role=option]");
    }

    Locator technique() {
        return page.locator(".set");
    }

    Locator refusal() {
        return page.locator(".refusal");
    }

    Locator chosen() {
        return page.locator("#chosen");
    }

    Locator thickness() {
        return page.locator("#thickness");
    }

    Locator foot() {
        return page.locator("#foot");
    }

    /** What is cut off or has to be scrolled for, in either direction. */
    @SuppressWarnings("unchecked")
    List<String> hidden() {
        return (List<String>)
                page.evaluate(
                        """
                () => [document.documentElement, ...document.querySelectorAll('#head, #ask, #body, #foot, .set dl, .fact, .tiles button')]
                  .map((element) => [element, element.matches('dl, .fact') ? 0 : element.scrollHeight - element.clientHeight, element.scrollWidth - element.clientWidth])
                  .filter(([element, high, wide]) => high > 1 || wide > 1)
                  .map(([element, high, wide]) => `${element.id || element.className || element.tagName} by ${high} and ${wide}: ${element.innerText.slice(0, 40)}`)
                """);
    }

    /** What lies under head or foot, wholly or in part, of all that belongs to an answer or is touched. */
    @SuppressWarnings("unchecked")
    List<String> covered() {
        return (List<String>)
                page.evaluate(
                        """
                () => {
                  const top = document.getElementById('ask').getBoundingClientRect().bottom;
                  const bottom = document.getElementById('foot').getBoundingClientRect().top;
                  return [...document.querySelectorAll('#news .tell, #body :is(button, input, .tell, .with, .filter, .fact dd, .cost, .placing dd)')]
                    .filter((element) => element.getBoundingClientRect().top < top - 1 || element.getBoundingClientRect().bottom > bottom + 1)
                    .map((element) => `${element.className || element.tagName}: ${element.innerText.slice(0, 40)}`);
                }
                """);
    }

    /** In the dim theme from now on. */
    RoomPage dimmed() {
        button("Dim").click();
        assertThat(page.locator("html")).hasAttribute("data-theme", "dim");
        return this;
    }

    @Override
    public void close() {
        visit.close();
    }
}
