package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.audit.Checkpoints;
import wallchart.audit.LedgerCheck;
import wallchart.audit.Verification;
import wallchart.equipment.Rooms;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** A signed version that the owner of the tables changed behind the ledger's back is found. */
class VersionRecordsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            UPDATE chart_version SET title = 'x'          | another title
            UPDATE chart_version SET printed_name = 'x'   | another printedName
            UPDATE chart_version SET reason = 'x'         | another reason
            UPDATE chart_version SET review_due = review_due + INTERVAL '1' DAY | another reviewDue
            UPDATE chart_row SET notes = 'x'              | rows that do not match
            UPDATE chart_row SET kv = kv + 0.1            | rows that do not match
            UPDATE chart_row SET ordinal = ordinal + 1    | such as an id or an order number
            UPDATE chart_row SET orientation = 'sideways' | cannot be read
            UPDATE chart_row SET mas = NULL               | cannot be read
            UPDATE equipment_revision SET installed_by = 'x' | another installedBy
            UPDATE equipment_revision SET in_force_from = in_force_from - INTERVAL '1' DAY | another inForceFrom
            UPDATE equipment_revision SET document = REPLACE(document, 'dr1', 'dr9') | cannot be read
            UPDATE equipment_revision SET revision = 2    | is not stored
            INSERT INTO equipment_revision SELECT room, 2, document, digest, in_force_from, installed_by FROM equipment_revision | no event
            INSERT INTO chart_version SELECT room, 2, digest, title, reason, in_force_from, review_due, signed_by, printed_name, role, signed_at, meaning FROM chart_version | no event
            """)
    void a_changed_version_is_found(String tampering, String complaint) throws Exception {
        var settings = TestDatabases.inMemory();
        try (var database = Database.open(settings, Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            PublishingFixtures.aDepartmentIn(database)
                    .publish(0, aChart().withBand(18, 24).content());
            assertThat(verify(database)).isInstanceOf(Verification.Sound.class);
            try (var owner = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                    var statement = owner.createStatement()) {
                statement.execute("DROP TRIGGER chart_version_append_only");
                statement.execute("DROP TRIGGER chart_row_append_only");
                statement.execute("DROP TRIGGER equipment_revision_append_only");
                statement.execute("ALTER TABLE chart_row DROP CONSTRAINT IF EXISTS chart_row_orientation_known");
                statement.execute("ALTER TABLE chart_row DROP CONSTRAINT chart_row_mas_or_aec");
                statement.execute(tampering);
            }
            assertThat(verify(database))
                    .isInstanceOfSatisfying(Verification.Doubtful.class, doubt -> assertThat(doubt.what())
                            .contains(complaint));
        }
    }

    private Verification verify(Database database) {
        return database.read(
                tx -> new LedgerCheck(List.of(Charts.records(), Rooms.records())).verify(tx, new Checkpoints(folder)));
    }
}
