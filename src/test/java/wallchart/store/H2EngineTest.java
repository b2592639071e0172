package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What only an embedded H2 needs: its write delay, its two users, its file. */
class H2EngineTest {

    private static final Actor SOMEBODY = Actor.system("test");

    @TempDir
    Path folder;

    @Test
    void the_write_delay_in_effect_is_zero_at_every_opening() throws Exception {
        for (int start = 0; start < 3; start++) {
            try (var database = open()) {
                assertThat(writeDelay(database.engine().owner().getConnection()))
                        .isZero();
            }
        }
    }

    /** Shows that the check above can fail: the delay does not survive a reopen, 500 ms is H2's own. */
    @Test
    void without_the_owners_connection_the_write_delay_would_be_half_a_second() throws Exception {
        open().close();
        var settings = TestDatabases.inFile(folder);
        try (var plain = DriverManager.getConnection(settings.url(), settings.user(), settings.password())) {
            assertThat(writeDelay(plain)).isEqualTo(500);
        }
    }

    @Test
    void requests_are_served_by_a_user_who_cannot_change_tables() throws Exception {
        try (var database = open()) {
            var notes = Notes.createIn(database);
            database.run(SOMEBODY, tx -> notes.add(tx, "first"));
            for (var statement : List.of(
                    "CREATE TABLE mine (id INTEGER)",
                    "DROP TABLE note",
                    "ALTER TABLE note DROP CONSTRAINT note_text_unique",
                    "ALTER TABLE note SET REFERENTIAL_INTEGRITY FALSE",
                    "DROP TRIGGER installation_append_only",
                    "TRUNCATE TABLE installation",
                    "DELETE FROM \"flyway_schema_history\"",
                    "SELECT * FROM \"flyway_schema_history\"",
                    "UPDATE installation SET mode = 'demo'",
                    "SET WRITE_DELAY 500",
                    "ALTER USER wallchart_app ADMIN TRUE",
                    "SHUTDOWN")) {
                assertRefused(database, statement);
            }
            assertThat(database.<Integer>read(notes::count)).isOne();
        }
    }

    private static void assertRefused(Database database, String statement) {
        assertThatThrownBy(() -> database.run(SOMEBODY, tx -> tx.handle().execute(statement)))
                .as(statement)
                .isInstanceOf(StoreException.class)
                .rootCause()
                .hasMessageMatching("(?s).*(ights|rights|owner).*");
    }

    @Test
    void the_password_of_that_user_is_another_one_at_every_start() throws Exception {
        try (var database = open()) {
            for (var guess : List.of("", "wallchart_app", "owner")) {
                assertThatThrownBy(() -> DriverManager.getConnection(
                                        TestDatabases.inFile(folder).url(), "wallchart_app", guess)
                                .close())
                        .hasMessageContaining("Wrong user name or password");
            }
            assertThat(database.mode()).isEqualTo(Mode.SITE);
        }
    }

    @Test
    void nobody_else_on_the_machine_may_read_the_file_be_it_new_or_old() throws Exception {
        var file = folder.resolve(TestDatabases.inFile(folder).url().replaceFirst(".*/", "") + ".mv.db");
        try (var database = open()) {
            Notes.createIn(database);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
        }
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        open().close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void a_file_in_use_by_another_process_is_named_with_the_next_step() throws Exception {
        try (var database = open()) {
            Notes.createIn(database);
        }
        try (var other = OtherProcess.start(CommitUntilKilled.class, folder.toString(), "careful")) {
            other.readLine();
            assertThatThrownBy(() -> open().close())
                    .isInstanceOf(StoreException.class)
                    .hasMessage("database " + TestDatabases.inFile(folder).url()
                            + " is in use by another process: stop the other server, or name another file");
        }
    }

    @Test
    void the_same_file_is_not_opened_twice_in_one_process() {
        try (var database = open()) {
            assertThatThrownBy(() -> open().close()).hasMessageContaining("already open in this process");
            database.run(SOMEBODY, tx -> {}); // and the first is not disturbed
        }
        open().close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:h2:mem:", "jdbc:h2:mem:a;DB_CLOSE_DELAY=-1", "jdbc:h2:tcp://host/a", "jdbc:h2:a"})
    void an_address_that_would_weaken_the_promises_is_refused(String url) {
        var settings = new DatabaseSettings(url, "wallchart", "owner", 1);
        assertThatThrownBy(() -> Database.open(settings, Mode.SITE, SettableClock.at(OnEveryDatabase.START))
                        .close())
                .hasMessageContaining(url)
                .hasMessageContaining("jdbc:h2:file:path");
    }

    private Database open() {
        return Database.open(TestDatabases.inFile(folder), Mode.SITE, SettableClock.at(OnEveryDatabase.START));
    }

    /** Milliseconds as the running store has them; the table of settings repeats what was asked for long ago. */
    private static int writeDelay(Connection connection) throws SQLException {
        var session = (SessionLocal) connection.unwrap(JdbcConnection.class).getSession();
        return session.getDatabase().getStore().getMvStore().getAutoCommitDelay();
    }
}
