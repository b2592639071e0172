package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.store.StoreException.Kind;

/** What happens when a database is opened again: by the same program, for another purpose, by an older program. */
@ParameterizedClass(name = "on {0}")
@EnumSource(TestDatabases.Kind.class)
class OpeningTest {

    @Parameter
    TestDatabases.Kind kind;

    @TempDir
    Path folder;

    private DatabaseSettings settings;

    @BeforeEach
    void a_place_that_outlives_closing() {
        settings = kind == TestDatabases.Kind.H2 ? TestDatabases.inFile(folder) : TestDatabases.onPostgres();
    }

    @Test
    void a_database_opens_again_in_the_mode_it_was_made_for() {
        for (int start = 0; start < 2; start++) {
            try (var database = open(Mode.DEMO)) {
                assertThat(database.mode()).isEqualTo(Mode.DEMO);
            }
        }
    }

    @Test
    void a_site_is_never_opened_as_a_demonstration() {
        open(Mode.SITE).close();
        assertRefused(Mode.DEMO, "was made as a site and cannot be opened as a demo");
    }

    @Test
    void the_other_mode_is_refused_before_anything_is_written() throws Exception {
        open(Mode.DEMO).close();
        sql("DELETE FROM \"flyway_schema_history\" WHERE \"version\" > '0002'");
        var before = query("SELECT COUNT(*) FROM \"flyway_schema_history\"");
        assertRefused(Mode.SITE, "was made as a demo and cannot be opened as a site");
        assertThat(query("SELECT COUNT(*) FROM \"flyway_schema_history\"")).isEqualTo(before);
        assertThat(query("SELECT mode FROM installation")).containsExactly("demo");
    }

    @Test
    void the_mode_cannot_be_rewritten_even_by_the_owner_of_the_tables() {
        open(Mode.SITE).close();
        assertThatThrownBy(() -> sql("UPDATE installation SET mode = 'demo'")).hasMessageContaining("never changed");
        assertThatThrownBy(() -> sql("DELETE FROM installation")).hasMessageContaining("never changed");
    }

    @Test
    void a_database_of_a_newer_program_is_refused_in_one_line() throws Exception {
        open(Mode.SITE).close();
        sql("UPDATE \"flyway_schema_history\" SET \"version\" = '9999', \"script\" = 'V9999__later.sql'"
                + " WHERE \"version\" = '0002'");
        assertRefused(Mode.SITE, "written by a newer program (migration 9999 is unknown here): start that program");
    }

    @Test
    void a_migration_edited_after_it_ran_is_refused_in_one_line() throws Exception {
        open(Mode.SITE).close();
        sql("UPDATE \"flyway_schema_history\" SET \"checksum\" = 1 WHERE \"version\" = '0001'");
        assertRefused(Mode.SITE, "migration 0001 was edited after it ran here");
    }

    @Test
    void a_database_with_tables_of_something_else_is_refused_and_left_alone() throws Exception {
        if (kind == TestDatabases.Kind.H2) {
            open(Mode.SITE).close();
            sql("DROP ALL OBJECTS");
        }
        sql("CREATE TABLE payroll (id INTEGER)");
        assertRefused(Mode.SITE, "non-empty schema");
        assertThat(query("SELECT COUNT(*) FROM payroll")).containsExactly("0");
    }

    @Test
    void a_wrong_password_says_so_without_repeating_it() {
        open(Mode.SITE).close();
        var wrong = new DatabaseSettings(settings.url(), settings.user() + "x", "open sesame", 1);
        assertThatThrownBy(() -> Database.open(wrong, Mode.SITE, SettableClock.at(OnEveryDatabase.START)))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(settings.url())
                .hasMessageNotContaining("open sesame");
        assertThat(wrong.toString()).doesNotContain("open sesame");
    }

    private void assertRefused(Mode mode, String reason) {
        assertThatThrownBy(() -> open(mode).close()).isInstanceOfSatisfying(StoreException.class, refused -> {
            assertThat(refused.kind()).isEqualTo(Kind.CANNOT_OPEN);
            assertThat(refused.getMessage()).contains(reason, settings.url()).doesNotContain("\n");
        });
    }

    private Database open(Mode mode) {
        return Database.open(settings, mode, SettableClock.at(OnEveryDatabase.START));
    }

    private void sql(String text) throws Exception {
        try (var connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var statement = connection.createStatement()) {
            statement.execute(text);
        }
    }

    private List<String> query(String text) throws Exception {
        var found = new ArrayList<String>();
        try (var connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var statement = connection.createStatement();
                var rows = statement.executeQuery(text)) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
