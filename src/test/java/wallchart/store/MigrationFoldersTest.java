package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationFoldersTest {

    @TempDir
    Path planted;

    @BeforeEach
    void folders_in_order() throws IOException {
        for (var file : List.of("common/V0001__a.sql", "h2/V0002__b.sql", "postgresql/V0002__b.sql")) {
            plant(file, "CREATE TABLE a (id INTEGER, CONSTRAINT a_pk PRIMARY KEY (id));");
        }
    }

    @Test
    void our_own_migrations_are_in_order() throws IOException {
        assertThat(MigrationFolders.faults(Path.of("db"))).isEmpty();
        assertThat(Files.exists(Path.of("db/common/V0001__installation.sql")))
                .as("the folders are the real ones")
                .isTrue();
    }

    @Test
    void folders_in_order_have_no_faults() throws IOException {
        assertThat(MigrationFolders.faults(planted)).isEmpty();
    }

    @Test
    void a_number_in_common_and_in_a_dialect_is_a_fault() throws IOException {
        plant("h2/V0001__also.sql", "");
        assertFault("V0001 is in common and in h2");
    }

    @Test
    void a_number_one_dialect_lacks_is_a_fault() throws IOException {
        plant("h2/V0003__c.sql", "");
        assertFault("V0003 is in h2 but not in postgresql");
    }

    @Test
    void a_number_used_twice_in_one_folder_is_a_fault() throws IOException {
        plant("common/V0001__again.sql", "");
        assertFault("V0001 is twice in common");
    }

    @Test
    void a_name_without_four_digits_is_a_fault() throws IOException {
        plant("common/V4__short.sql", "");
        assertFault("V4__short.sql is not named V0000__what.sql");
    }

    @Test
    void a_constraint_without_a_name_is_a_fault() throws IOException {
        plant("common/V0004__nameless.sql", "CREATE TABLE b (\n id INTEGER PRIMARY KEY\n);");
        plant("common/V0005__nameless.sql", "CREATE TABLE c (\n n INTEGER,\n UNIQUE (n)\n);");
        plant("common/V0006__named.sql", "CREATE TABLE d (n INTEGER,\n CONSTRAINT d_n\n   UNIQUE (n));");
        assertThat(MigrationFolders.faults(planted))
                .containsExactly(
                        "V0004__nameless.sql has a PRIMARY KEY without a name",
                        "V0005__nameless.sql has a UNIQUE without a name");
    }

    private void assertFault(String fault) throws IOException {
        assertThat(MigrationFolders.faults(planted)).containsExactly(fault);
    }

    private void plant(String file, String text) throws IOException {
        var path = planted.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
