package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the process while it writes. It shows what survives a killed process, not what survives a power cut. */
class CrashTest {

    private static final int ENOUGH_ROWS = 300;

    @TempDir
    Path folder;

    private final Notes notes = new Notes();

    @BeforeEach
    void an_empty_table() throws Exception {
        try (var database = open()) {
            Notes.createIn(database);
        }
    }

    @Test
    void no_acknowledged_write_is_lost_when_the_process_is_killed() throws Exception {
        for (int cycle = 0; cycle < 3; cycle++) {
            assertThat(lost("careful")).as("cycle " + cycle).isEmpty();
        }
    }

    /** Shows that the check above can fail: the same kill, with the settings H2 has by itself. */
    @Test
    void with_the_defaults_of_the_database_acknowledged_writes_are_lost() throws Exception {
        var lost = new ArrayList<String>();
        for (int cycle = 0; cycle < 3 && lost.isEmpty(); cycle++) {
            lost.addAll(lost("careless"));
        }
        assertThat(lost).isNotEmpty();
    }

    private Set<String> lost(String way) throws Exception {
        List<String> acknowledged = new ArrayList<>();
        try (var writer = OtherProcess.start(CommitUntilKilled.class, folder.toString(), way)) {
            while (acknowledged.size() < ENOUGH_ROWS) {
                acknowledged.add(writer.readLine());
            }
            acknowledged.addAll(writer.kill());
        }
        try (var database = open()) {
            var missing = new HashSet<>(acknowledged);
            missing.removeAll(database.<Set<String>>read(notes::texts));
            return missing;
        }
    }

    private Database open() {
        return Database.open(TestDatabases.inFile(folder), Mode.SITE, SettableClock.at(OnEveryDatabase.START));
    }
}
