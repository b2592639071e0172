package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wallchart.Program.Ended;

/** The folder of a real site as its administrator sets it up: settings, a department of one room, and what the commands make of it. */
record SiteFolder(Path folder) {

    static final String LEAD = "alex";
    static final String PASSWORD = "caliper-orange-bucky-41";

    private static final String SETTINGS =
            """
            server: {port: 0}
            database: {url: "jdbc:h2:file:./data/wallchart", passwordFile: ./data/database.password}
            patientGroups:
            """;

    /** A folder with settings and department, and nothing done yet. */
    static SiteFolder prepare(Path folder) throws IOException {
        var site = withSettings(folder);
        var room = Files.createDirectories(folder.resolve("department/r1"));
        for (var name :
                List.of("equipment.yaml", "chart-1.csv", "adjustments-1.csv", "chart-2.csv", "adjustments-2.csv")) {
            Files.copy(Path.of("demo-data/r1", name), room.resolve(name));
        }
        return site.writeVersions(1);
    }

    /** A folder with settings, and no department yet. */
    static SiteFolder withSettings(Path folder) throws IOException {
        var groups = Files.readAllLines(Path.of("demo-data/site.yaml")).stream()
                .filter(line -> line.matches("  - \\{id: .*"))
                .toList();
        assertThat(groups).isNotEmpty();
        Files.createDirectories(folder.resolve("config"));
        Files.writeString(folder.resolve("config/site.yaml"), SETTINGS + String.join("\n", groups) + "\n");
        return new SiteFolder(folder);
    }

    /** Writes the room's {@code chart.yaml}: versions 1 to last. */
    SiteFolder writeVersions(int last) throws IOException {
        var text = new StringBuilder("versions:\n");
        for (int number = 1; number <= last; number++) {
            text.append("  - {rows: chart-").append(number).append(".csv, adjustments: adjustments-");
            text.append(number).append(".csv, title: Version ").append(number);
            text.append(", reason: Techniques agreed for this room}\n");
        }
        Files.writeString(folder.resolve("department/r1/chart.yaml"), text);
        return this;
    }

    /** A copy of this site, as it would be restored from a backup. */
    SiteFolder copyTo(Path other) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var copy = other.resolve(folder.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        return new SiteFolder(other);
    }

    /** Writes another settings file beside {@code site.yaml} and names it. */
    String settings(String text) throws IOException {
        Files.writeString(folder.resolve("config/other.yaml"), text);
        return "config/other.yaml";
    }

    /** Adds the lead radiographer's account. */
    Ended addLead() throws IOException {
        return add(LEAD, "Alex Example", "lead");
    }

    /** Adds an account, with the password that everybody has here. */
    Ended add(String name, String printedName, String role) throws IOException {
        return run(PASSWORD, "person", "add", name, "--printed-name", printedName, "--role", role);
    }

    Ended load(String password) throws IOException {
        return run(password, "load", "--signed-by", LEAD, "department");
    }

    /** Runs one command with this site's settings and one line on standard input. */
    Ended run(String input, String... args) throws IOException {
        return Program.run(folder, input + "\n", withSettings(args));
    }

    /** A loading under way, signed with the right password. */
    Program startLoading() throws IOException {
        return Program.start(folder, PASSWORD + "\n", withSettings("load", "--signed-by", LEAD, "department"));
    }

    private static List<String> withSettings(String... args) {
        return withSettings(Program.jar(args));
    }

    private static List<String> withSettings(List<String> command) {
        var whole = new ArrayList<>(command);
        whole.addAll(List.of("--config", "config/site.yaml"));
        return whole;
    }

    /** The service with this site's settings, listening. */
    Service serve() throws IOException {
        return serve(Program.jar("serve"));
    }

    /** The service as that command line starts it. */
    Service serve(List<String> command) throws IOException {
        var program = Program.start(folder, "", withSettings(command));
        return new Service(program, program.await("http://127\\.0\\.0\\.1:\\d+"));
    }

    /** The running service and its address. */
    record Service(Program program, String address) implements AutoCloseable {
        @Override
        public void close() throws IOException {
            program.close();
        }
    }
}
