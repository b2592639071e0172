package wallchart.browser;

import java.nio.file.Path;
import java.util.function.Function;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import wallchart.DemoService;

/** The demo department of one test class: {@code @RegisterExtension static final DemoSite SITE = new DemoSite();} */
final class DemoSite implements BeforeAllCallback, AfterAllCallback {

    private final Function<Path, DemoService> start;
    private Path folder;
    private DemoService service;
    private int port;

    DemoSite() {
        this(DemoService::start);
    }

    private DemoSite(Function<Path, DemoService> start) {
        this.start = start;
    }

    /** The same department with its lengths in inches. */
    static DemoSite inInches() {
        return new DemoSite(DemoService::startInInches);
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        folder = Path.of("target", "browser", context.getRequiredTestClass().getSimpleName());
        service = start.apply(folder);
        port = service.port();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        service.close();
    }

    String address() {
        return "http://127.0.0.1:" + port; // also while it is stopped
    }

    /** Somebody at a screen, with a browser that was never here before. */
    Visit visit(Screen screen) {
        return new Visit(address(), screen);
    }

    /** As if the machine had gone down. */
    void stop() {
        service.close();
    }

    /** At the same address, with what was there. */
    void startAgain() {
        service = DemoService.start(folder, port, true);
    }
}
