package wallchart.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser of this machine: found, or installed from the distribution's packages, or fetched by Playwright; it says which. */
final class Chromium {

    private static final List<String> USUAL =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

    /** No sandbox, because tests may run as root; nothing in the background, because a closed network answers nothing. */
    private static final List<String> SWITCHES = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static Browser browser;

    private Chromium() {}

    /** One for all tests of this Java machine; it ends with it. */
    static synchronized Browser running() {
        if (browser == null) {
            browser = launch();
        }
        return browser;
    }

    private static Browser launch() {
        var found = find().or(Chromium::install);
        System.out.println("Browser tests use "
                + found.map(Path::toString).orElse("the chromium that Playwright fetches, because none is installed"));
        var settings = found.isPresent() ? Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1") : Map.<String, String>of();
        var playwright = Playwright.create(new Playwright.CreateOptions().setEnv(settings));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        var options = new BrowserType.LaunchOptions().setArgs(SWITCHES);
        found.ifPresent(options::setExecutablePath);
        return playwright.chromium().launch(options);
    }

    /** The one named by {@code CHROMIUM}, or in a usual place. */
    private static Optional<Path> find() {
        return Stream.concat(Stream.of(System.getenv("CHROMIUM")).filter(Objects::nonNull), USUAL.stream())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static Optional<Path> install() {
        if (!Files.isExecutable(Path.of("/usr/bin/apt-get")) || !"root".equals(System.getProperty("user.name"))) {
            return Optional.empty();
        }
        System.out.println("No chromium here: installing Debian's");
        return succeeds("apt-get", "update", "-q") && succeeds("apt-get", "install", "-y", "-q", "chromium")
                ? find()
                : Optional.empty();
    }

    private static boolean succeeds(String... command) {
        try {
            return new ProcessBuilder(command).inheritIO().start().waitFor() == 0;
        } catch (IOException cannot) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
