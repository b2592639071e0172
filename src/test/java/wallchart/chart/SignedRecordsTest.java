package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.StoreException;
import wallchart.store.TestDatabases;

/** What was signed cannot be altered, neither by the program's own user nor by the owner of the tables. */
class SignedRecordsTest {

    private static final Map<String, String> ONE_COLUMN_OF_EACH_TABLE = Map.of(
            "equipment_revision", "installed_by",
            "chart_version", "title",
            "chart_row", "notes",
            "chart_row_retired", "retired_in",
            "chart_adjustment", "notes",
            "chart_adjustment_retired", "retired_in");

    @ParameterizedTest
    @EnumSource(TestDatabases.Kind.class)
    void a_signed_record_can_be_neither_changed_nor_removed(TestDatabases.Kind kind) throws SQLException {
        var settings = kind.settings();
        try (var database = Database.open(settings, Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            var department = PublishingFixtures.aDepartmentIn(database);
            department.publish(
                    0,
                    aChart().withBand(18, 24)
                            .withBand(24, 30)
                            .with(addingKV("cast", "5"))
                            .content());
            department.publish(1, aChart().with(aRow().withMAs("32")).content());
            var cascade = kind == TestDatabases.Kind.POSTGRESQL ? " CASCADE" : "";
            for (var column : ONE_COLUMN_OF_EACH_TABLE.entrySet()) {
                var update = "UPDATE " + column.getKey() + " SET " + column.getValue() + " = " + column.getValue();
                var delete = "DELETE FROM " + column.getKey();
                for (var statement : List.of(update, delete, "TRUNCATE TABLE " + column.getKey() + cascade)) {
                    assertRefusedToTheProgram(department, database, statement);
                }
                assertRefusedToTheOwner(settings, update);
                assertRefusedToTheOwner(settings, delete);
                if (kind == TestDatabases.Kind.POSTGRESQL) { // an administrator's TRUNCATE passes a trigger on H2
                    assertRefusedToTheOwner(settings, "TRUNCATE TABLE " + column.getKey() + cascade);
                }
            }
            assertThat(department
                            .charts()
                            .version("r1", 1)
                            .orElseThrow()
                            .content()
                            .rows())
                    .hasSize(2);
        }
    }

    private static void assertRefusedToTheProgram(PublishingFixtures department, Database database, String statement) {
        assertThatThrownBy(
                        () -> database.run(department.lead(), tx -> tx.handle().execute(statement)))
                .as(statement)
                .isInstanceOf(StoreException.class);
    }

    private static void assertRefusedToTheOwner(DatabaseSettings settings, String statement) throws SQLException {
        try (var owner = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var running = owner.createStatement()) {
            assertThatThrownBy(() -> running.execute(statement))
                    .as(statement)
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("are never changed or removed");
        }
    }

    /** The guard of the guard: on a table that may be changed, the same statements run. */
    @ParameterizedTest
    @EnumSource(TestDatabases.Kind.class)
    void other_tables_may_be_changed(TestDatabases.Kind kind) {
        try (var database = Database.open(kind.settings(), Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            var department = PublishingFixtures.aDepartmentIn(database);
            assertThatCode(() -> database.run(
                            department.lead(), tx -> tx.handle().execute("UPDATE person SET printed_name = 'X'")))
                    .doesNotThrowAnyException();
        }
    }

    /** Rows that no check of the program would let pass are refused by the tables too. */
    @ParameterizedTest
    @EnumSource(TestDatabases.Kind.class)
    void a_row_with_both_mas_and_aec_is_refused_by_the_table(TestDatabases.Kind kind) {
        try (var database = Database.open(kind.settings(), Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            var department = PublishingFixtures.aDepartmentIn(database);
            department.publish(0, aChart().withBand(18, 24).content());
            var columns = "room, introduced_in, ordinal, projection, patient_group, support, band_from_cm, band_to_cm,"
                    + " reference_cm, measure_at, kv, mas, focal_spot, grid, sid_cm, receptor, field_cm, orientation,"
                    + " added_al_mm, added_cu_mm, centring, breathing, shielding, thickness_method, thickness_rate,"
                    + " notes";
            for (var wrong : List.of(
                    "'HIP', 1, NULL, NULL, NULL, NULL",
                    "'HIP', NULL, 5, NULL, NULL, NULL",
                    "'HIP', NULL, NULL, 70, NULL, NULL",
                    "'HIP', NULL, NULL, 80, 90, NULL",
                    "'HIP', NULL, NULL, NULL, NULL, 0",
                    "NULL, NULL, NULL, NULL, NULL, NULL")) {
                assertThatThrownBy(() -> copyWith(department, database, columns, wrong))
                        .as(wrong)
                        .isInstanceOf(StoreException.class);
            }
            assertThatCode(() -> copyWith(department, database, columns, "'HIP', NULL, NULL, 70, 80, 50"))
                    .doesNotThrowAnyException();
        }
    }

    /** A copy of the one row, with body part, density, target index, kV window and longest time as given. */
    private static void copyWith(PublishingFixtures department, Database database, String columns, String given) {
        database.run(department.lead(), tx -> tx.handle()
                .execute("INSERT INTO chart_row (" + columns
                        + ", body_part, aec_density, target_exposure_index, kv_from, kv_to, longest_time_ms)"
                        + " SELECT " + columns + ", " + typed(given) + " FROM chart_row WHERE body_part ="
                        + " 'LSPINE'"));
    }

    private static String typed(String given) {
        var values = given.split(", ");
        return values[0] + ", CAST(" + values[1] + " AS INTEGER), CAST(" + values[2] + " AS INTEGER), CAST(" + values[3]
                + " AS NUMERIC), CAST(" + values[4] + " AS NUMERIC), CAST(" + values[5] + " AS NUMERIC)";
    }
}
