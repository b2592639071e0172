package wallchart.browser;

import java.nio.file.Path;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import wallchart.DemoService;

/** The demo department of one test class: {@code @RegisterExtension static final DemoSite SITE = new DemoSite();} */
final class DemoSite implements BeforeAllCallback, AfterAllCallback {

    private Path folder;
    private DemoService service;
    private int port;

    @Override
    public void beforeAll(ExtensionContext context) {
        folder = Path.of("target", "browser", context.getRequiredTestClass().getSimpleName());
        service = DemoService.start(folder);
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
