package wallchart.store;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the migration refuses to overlook in its own folders. */
class MigrationTest {

    @TempDir
    Path folder;

    private Engine engine;

    @BeforeEach
    void an_empty_database_and_a_folder_with_one_migration() throws IOException {
        engine = Engine.open(TestDatabases.inMemory());
        plant("V0001__first.sql");
    }

    @AfterEach
    void close() {
        engine.close();
    }

    @Test
    void a_folder_in_order_is_migrated() {
        assertThatCode(() -> migrate("filesystem:" + folder)).doesNotThrowAnyException();
    }

    @Test
    void a_folder_that_is_not_there_is_a_fault_and_not_an_empty_database() {
        assertRefused("Unable to resolve location", "filesystem:" + folder, "classpath:db/nowhere");
    }

    @Test
    void a_file_whose_name_would_be_skipped_is_a_fault() throws IOException {
        plant("V0002_one_underscore_short.sql");
        assertRefused("Invalid SQL filenames found", "filesystem:" + folder);
    }

    @Test
    void a_number_that_comes_after_a_higher_one_has_run_is_a_fault() throws IOException {
        plant("V0003__third.sql");
        migrate("filesystem:" + folder);
        plant("V0002__late.sql");
        assertRefused("0002", "filesystem:" + folder);
    }

    private void assertRefused(String reason, String... locations) {
        assertThatThrownBy(() -> migrate(locations))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(reason)
                .hasMessageNotContaining("\n");
    }

    private void migrate(String... locations) {
        new Migration(engine, "jdbc:h2:mem:test", List.of(locations)).run();
    }

    private void plant(String name) throws IOException {
        Files.writeString(folder.resolve(name), "CREATE TABLE " + name.replaceAll("\\W|_+sql", "") + " (id INTEGER);");
    }
}
