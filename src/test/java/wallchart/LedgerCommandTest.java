package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.DriverManager;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.people.NewPerson;
import wallchart.people.Registration;
import wallchart.people.Role;
import wallchart.store.Actor;

/** A stopped ledger goes on when, and only when, the medical physicist answers for it. */
class LedgerCommandTest {

    private static final String PASSWORD = "four lead aprons hang there";
    private static final String REASON = "Compared with the backup of Monday, nothing else differs";
    private static final String DATABASE = "data.mv.db";

    /** A site with three accounts and a signed ledger, made once because passwords are slow to hash. */
    @TempDir
    private static Path site;

    @TempDir
    private Path folder;

    private String config;

    private record Ended(int exitCode, String out, String err) {}

    @BeforeAll
    static void a_site_whose_ledger_is_sound_and_signed() throws IOException {
        served(config(site), Role.PHYSICIST, Role.LEAD, Role.ADMINISTRATOR);
    }

    private static String config(Path folder) throws IOException {
        return Files.writeString(
                        folder.resolve("site.yaml"),
                        "server: {port: 0}\ndatabase: {url: \"jdbc:h2:file:" + folder + "/data\", passwordFile: "
                                + folder + "/password}")
                .toString();
    }

    /** The service runs, accounts are added meanwhile, and it ends. */
    private static void served(String config, Role... added) {
        var settings = SettingsFile.read(Path.of(config));
        var database = SiteDatabase.open(settings);
        try (var service = Application.start(settings, database, settings.ledgerFolder(), Clock.systemUTC())) {
            assertThat(service.port()).isPositive();
            for (var role : added) {
                var person = new NewPerson(role.slug() + "-one", "Pat", role, PASSWORD);
                assertThat(Application.people(settings, database).add(Actor.system("test"), person))
                        .isInstanceOf(Registration.Registered.class);
            }
        }
    }

    @BeforeEach
    void a_copy_of_it() throws IOException {
        Files.createDirectory(folder.resolve("data.ledger"));
        for (var name : List.of(
                DATABASE,
                "password",
                "data.ledger/checkpoints.ndjson",
                "data.ledger/ledger.key",
                "data.ledger/ledger.pub")) {
            Files.copy(site.resolve(name), folder.resolve(name));
        }
        config = config(folder);
    }

    private void asOwner(String... tampering) throws Exception {
        var access = DatabaseAccess.of(SettingsFile.read(Path.of(config)).database());
        try (var owner = DriverManager.getConnection(access.url(), access.user(), access.password());
                var statement = owner.createStatement()) {
            for (var each : tampering) {
                statement.execute(each);
            }
        }
    }

    /** Stopped, with an event that was changed. */
    private void stopped() throws Exception {
        asOwner(
                "DROP TRIGGER audit_event_append_only",
                "UPDATE audit_event SET request_id = 'another' WHERE seq = 2",
                "UPDATE audit_turn SET stopped = 'found by the keeper'");
    }

    @Test
    void it_is_checked_resumed_and_served_again_and_every_later_check_names_the_doubt() throws Exception {
        stopped();
        refused(run("six lead aprons hang there", "person", "add", "new", "--printed-name", "N", "--role", "lead"));

        var ended = resume(PASSWORD, "physicist-one", REASON);

        assertThat(ended.err()).isEmpty();
        assertThat(ended.exitCode()).isZero();
        assertThat(ended.out())
                .contains(
                        "in doubt: event 2 is not what was written",
                        "stopped: found by the keeper",
                        "resumed by event 4");
        served(config, Role.RADIOGRAPHER);
        var verified = run("", "verify");
        assertThat(verified.exitCode()).isZero();
        assertThat(verified.out())
                .startsWith("note: event 4: in doubt was that event 2 is not what was written")
                .contains("physicist-one (physicist) resumed the ledger at ", REASON)
                .contains("checkpoint 5 of ", "sound: 5 events");
    }

    @Test
    void an_older_backup_that_was_restored_is_acknowledged_and_served_again() throws IOException {
        served(config, Role.RADIOGRAPHER);
        Files.copy(site.resolve(DATABASE), folder.resolve(DATABASE), StandardCopyOption.REPLACE_EXISTING);
        served(config);
        refused(run("six lead aprons hang there", "person", "add", "new", "--printed-name", "N", "--role", "lead"));

        assertThat(resume(PASSWORD, "physicist-one", REASON).out()).contains("an older database was restored");

        served(config, Role.RADIOGRAPHER);
        assertThat(run("", "verify").out())
                .contains("note: event 4: in doubt was that the ledger ends with event 3", "sound: 5 events");
    }

    @Test
    void a_sound_ledger_is_left_as_it_is() throws IOException {
        var ended = resume(PASSWORD, "physicist-one", REASON);

        refused(ended);
        assertThat(ended.err()).contains("the ledger is neither stopped nor in doubt: there is nothing to resume");
        assertThat(run("", "verify").out()).contains("sound: 3 events");
    }

    @Test
    void a_record_that_differs_from_its_event_is_to_be_restored() throws Exception {
        stopped();
        asOwner("UPDATE person SET role = 'lead' WHERE name = 'administrator-one'");

        var ended = resume(PASSWORD, "physicist-one", REASON);

        refused(ended);
        assertThat(ended.err()).contains("a record that differs is never acknowledged; restore it from a backup");
        assertThat(run("", "verify").exitCode()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            not the password at all     | physicist-one     | Compared with the backup  | the password of "physicist-one" was not accepted
            four lead aprons hang there | lead-one          | Compared with the backup  | only a physicist answers for a ledger in doubt
            four lead aprons hang there | administrator-one | Compared with the backup  | only a physicist answers for a ledger in doubt
            four lead aprons hang there | nobody-one        | Compared with the backup  | there is no account "nobody-one"
            four lead aprons hang there | physicist-one     | fine   .                  | the reason has 5 visible characters: write at least 10
            """)
    void otherwise_it_stays_stopped(String password, String name, String reason, String why) throws Exception {
        stopped();
        var ended = resume(password, name, reason);

        refused(ended);
        assertThat(ended.err()).contains(why);
        refused(run("six lead aprons hang there", "person", "add", "new", "--printed-name", "N", "--role", "lead"));
        assertThat(run("", "verify").exitCode()).isEqualTo(1);
    }

    private static void refused(Ended ended) {
        assertThat(ended.exitCode()).isEqualTo(1);
        assertThat(ended.err().lines()).singleElement().asString().startsWith("wallchart: ");
    }

    private Ended resume(String password, String name, String reason) throws IOException {
        return run(password, "ledger", "resume", "--name", name, "--reason", reason);
    }

    private Ended run(String input, String... args) throws IOException {
        var terminal = System.in;
        System.setIn(new ByteArrayInputStream((input + "\n").getBytes(StandardCharsets.UTF_8)));
        try {
            var out = new StringWriter();
            var err = new StringWriter();
            var all = Arrays.copyOf(args, args.length + 2);
            all[args.length] = "--config";
            all[args.length + 1] = config;
            int exitCode = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), all);
            return new Ended(exitCode, out.toString(), err.toString());
        } finally {
            System.setIn(terminal);
        }
    }
}
