package wallchart;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import wallchart.Refusals.Refused;

/** Runs an invented department to look around in, on this machine only. */
@Command(
        name = "demo",
        description = {
            "Runs an invented department on this machine, until it is stopped.",
            "Its passwords and tokens are known to everybody, so it listens on the loopback address only."
        },
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    @Option(
            names = "--port",
            defaultValue = "7070",
            description = "Port; 0 takes any free one (default ${DEFAULT-VALUE}).")
    private int port;

    @Option(names = "--keep", description = "Go on with the data of the last demo instead of starting afresh.")
    private boolean keep;

    @Option(
            names = "--dir",
            paramLabel = "FOLDER",
            defaultValue = "target/demo",
            description = "Folder of the demo's database file (default ${DEFAULT-VALUE}).")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        try (var data = DemoData.open()) {
            var department = new DemoDepartment(data.folder(), folder, port, keep);
            FreePort.require(department.settings().server(), "--port");
            var application = department.start(Clock.systemUTC());
            announce(spec.commandLine().getOut(), application.port());
            Lifetime.untilStopped(application);
            return 0;
        }
    }

    private static void announce(PrintWriter out, int port) {
        var address = "http://127.0.0.1:" + port;
        out.println("Wallchart demo: an invented department. Not for patients.");
        out.println();
        out.println("  Start page   " + address + "/");
        out.println("  Interface    " + address + "/docs");
        out.println("  Rooms        r1, r2, r3 with the room tokens demo-r1, demo-r2, demo-r3");
        out.println("  People       lead, radiographer, physicist, admin; password demo- and the name");
        out.println();
        out.println("Ask room r1 for an AP knee of 12.4 cm at 112 cm:");
        out.println();
        out.println(
                "  curl -s -H 'Authorization: Bearer demo-r1' '" + address
                        + "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=12.4&sidCm=112'");
        out.println();
        out.println("Stop with Ctrl+C.");
        out.flush();
    }

    /** The demo's files, in the source tree's build or inside the jar. */
    private record DemoData(Path folder, FileSystem jar) implements AutoCloseable {

        static DemoData open() throws IOException {
            try {
                URI place =
                        DemoCommand.class.getResource("/demo-data/site.yaml").toURI();
                if (place.getScheme().equals("file")) {
                    return new DemoData(Path.of(place).getParent(), null);
                }
                var jar = FileSystems.newFileSystem(place, Map.of());
                return new DemoData(jar.getPath("/demo-data"), jar);
            } catch (URISyntaxException impossible) {
                throw new Refused("the demo's files cannot be found: " + impossible.getMessage());
            }
        }

        @Override
        public void close() throws IOException {
            if (jar != null) {
                jar.close();
            }
        }
    }
}
