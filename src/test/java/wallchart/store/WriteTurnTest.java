package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Writes of an H2 file never overlap. */
class WriteTurnTest {

    private static final Actor SOMEBODY = Actor.system("test");
    private static final int WRITERS = 4;
    private static final int WRITES = 20;

    private final AtomicInteger writing = new AtomicInteger();
    private final AtomicInteger most = new AtomicInteger();

    @Test
    void while_one_writes_to_a_file_all_others_wait(@TempDir Path folder) throws Exception {
        writeAtOnce(TestDatabases.inFile(folder));
        assertThat(most).hasValue(1);
    }

    /** Shows that the test above can fail: in memory nothing survives the process, and writes do overlap. */
    @Test
    void in_memory_writes_overlap() throws Exception {
        writeAtOnce(TestDatabases.inMemory());
        assertThat(most).hasValueGreaterThan(1);
    }

    private void writeAtOnce(DatabaseSettings settings) throws Exception {
        var threads = Executors.newFixedThreadPool(WRITERS);
        try (var database = Database.open(settings, Mode.SITE, SettableClock.at(OnEveryDatabase.START))) {
            var notes = Notes.createIn(database);
            var writers = new ArrayList<Callable<Object>>();
            for (int i = 0; i < WRITERS * WRITES; i++) {
                var text = "note " + i;
                writers.add(() -> {
                    database.run(SOMEBODY, tx -> counted(() -> notes.add(tx, text)));
                    return text;
                });
            }
            for (var written : threads.invokeAll(writers, 1, TimeUnit.MINUTES)) {
                written.get();
            }
            assertThat(database.<Set<String>>read(notes::texts)).hasSize(WRITERS * WRITES);
        } finally {
            threads.shutdownNow();
        }
    }

    private void counted(Runnable write) {
        most.accumulateAndGet(writing.incrementAndGet(), Math::max);
        try {
            write.run();
            Thread.sleep(2);
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        } finally {
            writing.decrementAndGet();
        }
    }
}
