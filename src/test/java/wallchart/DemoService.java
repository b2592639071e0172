package wallchart;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;

/** The demo department as the program starts it, on a free port; for tests that look at it from outside. */
public final class DemoService implements AutoCloseable {

    private final Application application;

    private DemoService(Application application) {
        this.application = application;
    }

    /** Starts it afresh in that folder. */
    public static DemoService start(Path folder) {
        return start(folder, 0, false);
    }

    /**
     * Starts it.
     *
     * @param port 0 for any free one
     * @param keep go on with what an earlier start left in the folder
     */
    public static DemoService start(Path folder, int port, boolean keep) {
        return new DemoService(new DemoDepartment(Path.of("demo-data"), folder, port, keep).start(Clock.systemUTC()));
    }

    /** Starts a copy of the department that shows and takes lengths in inches. */
    public static DemoService startInInches(Path folder) {
        var department = folder.resolveSibling(folder.getFileName() + "-in-inches");
        try {
            copy(Path.of("demo-data"), department);
            var site = department.resolve("site.yaml");
            var written = Files.readString(site);
            var inInches = written.replace("(invented)\"}", "(invented)\", lengthUnit: in}");
            if (inInches.equals(written)) {
                throw new IllegalStateException("demo-data/site.yaml names its site in another way: " + written);
            }
            Files.writeString(site, inInches);
        } catch (IOException cannot) {
            throw new UncheckedIOException(cannot);
        }
        return new DemoService(new DemoDepartment(department, folder, 0, false).start(Clock.systemUTC()));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var copy = to.resolve(from.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    public int port() {
        return application.port();
    }

    /** Without a slash at its end. */
    public String address() {
        return "http://127.0.0.1:" + port();
    }

    @Override
    public void close() {
        application.close();
    }
}
