package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.Rooms;
import wallchart.people.NewPerson;
import wallchart.people.Role;
import wallchart.store.Actor;

/** The command line: help, exit codes, and one clear line for everything that stops it. */
class MainTest {

    @TempDir
    private Path folder;

    /** What a command said and how it ended. */
    private record Ended(int exitCode, String out, String err) {}

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "demo --help",
                "serve --help",
                "check --help",
                "load --help",
                "person --help",
                "person add --help",
                "person list --help",
                "token --help",
                "token issue --help",
                "token list --help",
                "token revoke --help",
                "verify --help",
                "ledger --help",
                "ledger resume --help",
                "help serve",
                "--version"
            })
    void every_command_has_help(String args) {
        var ended = run(args.split(" "));

        assertThat(ended.exitCode()).isZero();
        assertThat(ended.out()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sevre",
                "serve",
                "serve --confg x",
                "demo --port many",
                "person",
                "token",
                "person add",
                "ledger",
                "ledger resume",
                ""
            })
    void wrong_usage_ends_with_2(String args) {
        var ended = args.isEmpty() ? run() : run(args.split(" "));

        assertThat(ended.exitCode()).isEqualTo(2);
        assertThat(ended.err()).isNotBlank();
    }

    @Test
    void an_unknown_key_stops_the_start_with_one_line() throws IOException {
        var config = Files.writeString(folder.resolve("site.yaml"), "server: {prot: 7070}");

        var ended = run("serve", "--config", config.toString());

        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.err().lines())
                .containsExactly("wallchart: " + config
                        + ": server.prot is no known key: write one of host, port, secureCookies");
    }

    @Test
    void an_unknown_rule_set_stops_the_start_with_one_line() throws IOException {
        var config = Files.writeString(folder.resolve("site.yaml"), "chart: {requiredFields: [somewhere-1]}");

        var ended = run("serve", "--config", config.toString());

        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.err().lines()).singleElement().asString().contains("\"somewhere-1\" is no rule set");
    }

    @Test
    void patient_groups_without_adults_stop_the_start_with_one_line() throws IOException {
        var config = Files.writeString(
                folder.resolve("site.yaml"), "patientGroups: [{id: child, label: 1 to 5 years, by: age}]");

        var ended = run("serve", "--config", config.toString());

        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .startsWith("wallchart: " + config + ": patient groups: \"adult\" is missing");
    }

    @Test
    void a_token_without_a_usable_label_is_refused_with_one_line() throws IOException {
        var config = Files.writeString(
                folder.resolve("site.yaml"),
                "database: {url: \"jdbc:h2:file:" + folder + "/data\", passwordFile: " + folder + "/password}");
        try (var database = SiteDatabase.open(SettingsFile.read(config))) {
            var files = new DepartmentFolder(Path.of("demo-data")).rooms().get(0);
            new Rooms(database).install(Actor.system("test"), files.equipment());
        }

        var ended = run("token", "issue", "--config", config.toString(), "r1", "--label", " ");

        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.err().lines())
                .containsExactly("wallchart: label of a room token must be one line of 1 to 120 characters");
    }

    @Test
    void a_port_in_use_stops_the_start_with_one_line_before_any_file_is_made() throws IOException {
        try (var taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            var config = Files.writeString(
                    folder.resolve("site.yaml"),
                    "server: {port: " + taken.getLocalPort() + "}\ndatabase: {url: \"jdbc:h2:file:" + folder
                            + "/data\", passwordFile: " + folder + "/password}");

            var ended = run("serve", "--config", config.toString());

            assertThat(ended.exitCode()).isEqualTo(1);
            assertThat(ended.err().lines())
                    .singleElement()
                    .asString()
                    .contains("cannot listen on 127.0.0.1 port " + taken.getLocalPort())
                    .contains("server.port");
        }
        assertThat(folder.resolve("data.mv.db")).doesNotExist();
        assertThat(folder.resolve("password")).doesNotExist();
    }

    @Test
    void check_finds_nothing_that_blocks_in_the_demo_department() {
        var ended = run("check", "--config", "demo-data/site.yaml", "demo-data");

        assertThat(ended.err()).isEmpty();
        assertThat(ended.exitCode()).isZero();
        assertThat(ended.out()).contains("r1/chart-2.csv", "0 blocking");
    }

    @Test
    void check_names_line_and_field_of_a_bad_cell_and_ends_with_1() throws IOException {
        var room = Files.createDirectories(folder.resolve("r1"));
        for (var name : List.of("equipment.yaml", "chart-1.csv", "adjustments-1.csv")) {
            Files.copy(Path.of("demo-data/r1", name), room.resolve(name));
        }
        Files.writeString(
                room.resolve("chart.yaml"),
                "versions: [{rows: chart-1.csv, adjustments: adjustments-1.csv, title: First, reason: For a check of one bad cell}]");
        var rows = Files.readString(room.resolve("chart-1.csv"));
        Files.writeString(room.resolve("chart-1.csv"), rows.replaceFirst("calipers|,52,", ",5e2,"));

        var ended = run("check", "--config", "demo-data/site.yaml", folder.toString());

        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.out()).contains("line 2", "kV", "5e2");
    }

    @Test
    void verify_says_that_a_ledger_is_sound_and_names_an_event_that_was_changed() throws Exception {
        var url = "jdbc:h2:file:" + folder + "/data";
        var config = Files.writeString(
                folder.resolve("site.yaml"), "database: {url: \"" + url + "\", passwordFile: " + folder + "/password}");
        var settings = SettingsFile.read(config);
        try (var database = SiteDatabase.open(settings)) {
            var people = Application.people(settings, database);
            for (var name : List.of("one", "two", "three")) {
                people.add(
                        Actor.system("test"),
                        new NewPerson(name + "-of-us", "Pat", Role.LEAD, "four lead aprons hang there"));
            }
        }

        assertThat(run("verify", "--config", config.toString()).out()).contains("sound: 3 events");

        var access = DatabaseAccess.of(settings.database());
        try (var owner = DriverManager.getConnection(access.url(), access.user(), access.password());
                var statement = owner.createStatement()) {
            statement.execute("DROP TRIGGER audit_event_append_only");
            statement.execute("UPDATE audit_event SET actor = 'nobody' WHERE seq = 2");
        }
        var ended = run("verify", "--config", config.toString());
        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.out()).contains("in doubt: event 2 ");
    }

    private static Ended run(String... args) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Ended(exitCode, out.toString(), err.toString());
    }
}
