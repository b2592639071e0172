package wallchart.browser;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wallchart.DemoService;

/** What somebody at a room's workstation waits for, in chromium over loopback: the first paint, and the technique after the last key. */
public final class RoomPageBenchmark {

    private static final int OPENINGS = 15;
    private static final int QUESTIONS = 60;
    private static final String ROOM = "/rooms/r1#token=demo-r1";

    /** A heading, a paragraph and a style sheet: what any page costs on this machine at this hour. */
    private static final String PLAIN = "/problems/not-found";

    private static final double SLOW_MS = 60_000;

    /** From the key to the frame after the one in which kV stands there for that thickness. */
    private static final String WATCH =
            """
            addEventListener('keydown', (event) => { window.pressed = event.timeStamp; window.shown = null; }, true);
            new MutationObserver(() => {
              const title = document.getElementById('technique-title')?.textContent ?? '';
              if (window.shown !== null || !title.endsWith(` ${document.getElementById('thickness')?.value} cm`)) return;
              const pressed = window.pressed;
              window.shown = 0;
              requestAnimationFrame(() => setTimeout(() => { window.shown = performance.now() - pressed; }));
            }).observe(document.getElementById('body'), { childList: true, subtree: true, characterData: true });
            """;

    private RoomPageBenchmark() {}

    public static void measure() {
        try (var service = DemoService.start(Path.of("target", "bench", "room-page"))) {
            try (var visit = new Visit(service.address(), Screen.SMALL)) {
                firstPaints(service, visit);
                var page = visit.page();
                page.locator(".regions").waitFor();
                page.evaluate(WATCH);
                answers(page);
            }
        }
    }

    private static void firstPaints(DemoService service, Visit visit) {
        var plain = new ArrayList<Double>();
        var cold = new ArrayList<Double>();
        for (int i = 0; i < OPENINGS; i++) {
            try (var fresh = new Visit(service.address(), Screen.SMALL)) {
                plain.add(firstPaint(fresh, PLAIN));
            }
            try (var fresh = new Visit(service.address(), Screen.SMALL)) {
                cold.add(firstPaint(fresh, ROOM));
            }
        }
        say("First paint of a page of one paragraph, for comparison", plain);
        say("First paint of a browser that was never here", cold);
        var installed = new ArrayList<Double>();
        firstPaint(visit, ROOM);
        visit.page()
                .locator(".regions")
                .waitFor(new com.microsoft.playwright.Locator.WaitForOptions().setTimeout(SLOW_MS));
        until(visit.page(), "navigator.serviceWorker.controller !== null");
        for (int i = 0; i < OPENINGS; i++) {
            installed.add(firstPaint(visit, ROOM));
        }
        say("First paint of the installed page", installed);
    }

    private static double firstPaint(Visit visit, String address) {
        var page = visit.open("about:blank");
        page.navigate(address);
        until(page, "performance.getEntriesByName('first-contentful-paint').length === 1");
        return ((Number) page.evaluate("performance.getEntriesByName('first-contentful-paint')[0].startTime"))
                .doubleValue();
    }

    private static void until(Page page, String condition) {
        page.waitForCondition(() -> (boolean) page.evaluate(condition));
    }

    private static void answers(Page page) {
        var times = new ArrayList<Double>();
        for (int i = 0; i < QUESTIONS; i++) {
            page.keyboard().press("Escape");
            page.keyboard().type(i % 2 == 0 ? "ka1" : "lsl2");
            page.keyboard().press(i % 2 == 0 ? "2" : "6");
            until(page, "window.shown > 0");
            times.add(((Number) page.evaluate("window.shown")).doubleValue());
        }
        say("Technique after the last key", times);
    }

    private static void say(String what, List<Double> times) {
        var sorted = times.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%s: median %.0f ms, 9 of 10 within %.0f ms, slowest %.0f ms (%d)%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 9 / 10),
                sorted.get(sorted.size() - 1),
                sorted.size());
    }
}
