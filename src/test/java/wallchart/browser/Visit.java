package wallchart.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.RequestOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Somebody at a screen. Whatever a page must never do is watched all the time: complain in the console (where a policy that is broken
 * shows), fail in a script, or ask another host for anything.
 */
final class Visit implements AutoCloseable {

    /** WCAG 2.2 level A and AA as axe names them. */
    private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    static {
        // as long as a step may take where all tests of the machine run at once
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
    }

    private final String address;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new CopyOnWriteArrayList<>();

    Visit(String address, Screen screen) {
        this.address = address;
        this.context = Chromium.running().newContext(screen.options().setBaseURL(address));
        context.setDefaultTimeout(20_000);
        this.page = watched(context.newPage());
    }

    private Page watched(Page opened) {
        opened.onConsoleMessage(message -> {
            // a status of 400 and over, or no network, is reported by the browser itself
            if (message.type().equals("error") && !message.text().startsWith("Failed to load resource")) {
                complaints.add("console: " + message.text());
            }
        });
        opened.onPageError(error -> complaints.add("script: " + error));
        opened.onRequest(request -> {
            if (!request.url().startsWith(address)
                    && !request.url().startsWith("data:")
                    && !request.url().startsWith("blob:")) {
                complaints.add("another host: " + request.url());
            }
        });
        return opened;
    }

    /** Signs in without the form, as a demo account. */
    Visit as(String name) {
        var answer = context.request()
                .post(
                        "/api/v1/session",
                        RequestOptions.create().setData(Map.of("name", name, "password", "demo-" + name)));
        context.addInitScript("localStorage.setItem('wallchart.session', JSON.stringify(" + answer.text() + "))");
        return this;
    }

    Page open(String path) {
        page.navigate(path);
        return page;
    }

    Page page() {
        return page;
    }

    /** One more window of the same browser. */
    Page another() {
        return watched(context.newPage());
    }

    BrowserContext context() {
        return context;
    }

    /** A picture for people to look at. */
    void picture(String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target", "screens", name + ".png")));
    }

    /** No violation of WCAG 2.2 AA that axe can see on the page as it stands now. */
    void assertAccessible() {
        var found = new AxeBuilder(page).withTags(WCAG).analyze().getViolations();
        assertThat(found.stream()
                        .map(rule -> rule.getImpact() + " " + rule.getId() + ": " + rule.getHelp() + " at "
                                + rule.getNodes().stream()
                                        .map(node -> node.getHtml())
                                        .toList())
                        .toList())
                .as("WCAG 2.2 AA by axe on " + page.url())
                .isEmpty();
    }

    /** Nothing happened that must never happen. */
    void assertClean() {
        assertThat(complaints).as("complaints on " + page.url()).isEmpty();
    }

    @Override
    public void close() {
        context.close();
    }
}
