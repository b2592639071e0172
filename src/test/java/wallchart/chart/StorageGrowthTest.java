package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** Storage grows with what changed: 10 changed rows cost under 20 KB, whatever the size of the chart. */
class StorageGrowthTest {

    private static final int VERSIONS = 40;
    private static final long MOST_BYTES = 20_000;
    /** Ten rows of some hundred bytes each: less would mean that nothing was measured. */
    private static final long LEAST_BYTES = 1_000;

    @TempDir
    Path folder;

    @Test
    void on_postgresql_by_the_size_of_tables_and_indexes() {
        try (var database = open(TestDatabases.onPostgres())) {
            var department = PublishingFixtures.aDepartmentIn(database);
            department.publish(0, aLargeChart(0));
            long before = bytes(database);
            publishMore(department);
            assertThat((bytes(database) - before) / VERSIONS).isBetween(LEAST_BYTES, MOST_BYTES);
        }
    }

    @Test
    void on_h2_by_the_size_of_the_compacted_file() throws Exception {
        var settings = TestDatabases.inFile(folder);
        PublishingFixtures department;
        try (var database = open(settings)) {
            department = PublishingFixtures.aDepartmentIn(database);
            department.publish(0, aLargeChart(0));
        }
        long before = compactedBytes(settings);
        try (var database = open(settings)) {
            publishMore(department.reopenedIn(database));
        }
        assertThat((compactedBytes(settings) - before) / VERSIONS).isBetween(LEAST_BYTES, MOST_BYTES);
    }

    private static Database open(DatabaseSettings settings) {
        return Database.open(settings, Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"));
    }

    private static void publishMore(PublishingFixtures department) {
        for (int base = 1; base <= VERSIONS; base++) {
            department.publish(base, aLargeChart(base));
        }
    }

    /** 600 rows, ten of which carry the edit's number. */
    private static ChartContent aLargeChart(int edit) {
        var chart = aChart();
        BodyParts.all().stream().limit(30).forEach(part -> {
            for (int from = 10; from < 30; from++) {
                boolean edited = part.term().equals("LSPINE") && from < 20;
                chart.with(aRow().of(part.term(), "ap")
                        .withBand(from, from + 1)
                        .withCentring("Midpoint of the joint, central ray perpendicular to the receptor")
                        .withNotes(edited ? "edit " + edit : ""));
            }
        });
        return chart.content();
    }

    private static long bytes(Database database) {
        return database.read(tx -> tx.handle()
                .createQuery("SELECT SUM(pg_total_relation_size(table_name::regclass)) FROM (VALUES ('chart_version'),"
                        + " ('chart_row'), ('chart_row_retired'), ('chart_adjustment'), ('chart_adjustment_retired'))"
                        + " AS tables (table_name)")
                .mapTo(Long.class)
                .one());
    }

    private long compactedBytes(DatabaseSettings settings) throws IOException, SQLException {
        try (var owner = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var compact = owner.createStatement()) {
            compact.execute("SHUTDOWN COMPACT");
        }
        return Files.size(folder.resolve("wallchart.mv.db"));
    }
}
