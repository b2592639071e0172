package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.h2.mvstore.MVStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why writes of an H2 file take turns: what comes of a transaction that was stored halfway, once its undo log is not stored with it. */
class RowWithoutUndoLogTest {

    private static final Actor SOMEBODY = Actor.system("test");
    private static final int MOST_OTHERS = 5;

    @TempDir
    Path folder;

    private final Notes notes = new Notes();

    @Test
    void with_its_undo_log_a_row_of_a_dead_transaction_is_taken_back() throws Exception {
        try (var database = openedAfter(storedHalfway())) {
            assertThat(seen(database)).containsExactly(Set.of("whole"));
        }
    }

    @Test
    void without_its_undo_log_it_is_seen_by_some_transactions_and_not_by_others() throws Exception {
        var file = storedHalfway();
        removeUndoLogs(file);
        try (var database = openedAfter(file)) {
            assertThat(seen(database)).containsExactlyInAnyOrder(Set.of("whole"), Set.of("whole", "half"));
        }
    }

    /** A copy of the file from the middle of a transaction, as a kill at that moment would leave it. */
    private Path storedHalfway() throws Exception {
        var copy = folder.resolve("other/wallchart.mv.db");
        try (var database = open(folder)) {
            Notes.createIn(database);
            database.run(SOMEBODY, tx -> notes.add(tx, "whole"));
            database.run(SOMEBODY, tx -> {
                notes.add(tx, "half");
                StoreFixtures.asOwner(database, "CHECKPOINT SYNC");
                copyTo(copy);
            });
        }
        return copy;
    }

    private void copyTo(Path copy) {
        try {
            Files.createDirectories(copy.getParent());
            Files.copy(folder.resolve("wallchart.mv.db"), copy);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void removeUndoLogs(Path file) {
        try (var store = new MVStore.Builder().fileName(file.toString()).open()) {
            for (var map : Set.copyOf(store.getMapNames())) {
                if (map.startsWith("undoLog")) {
                    store.removeMap(map);
                }
            }
        }
    }

    private Database openedAfter(Path file) {
        return open(file.getParent());
    }

    private static Database open(Path folder) {
        return Database.open(settings(folder), Mode.SITE, SettableClock.at(OnEveryDatabase.START));
    }

    private static DatabaseSettings settings(Path folder) {
        var file = TestDatabases.inFile(folder);
        return new DatabaseSettings(file.url(), file.user(), file.password(), MOST_OTHERS + 1);
    }

    /** What is read while none, one, two … other transactions are open, each of which takes a number away. */
    private Set<Set<String>> seen(Database database) throws Exception {
        var threads = Executors.newCachedThreadPool();
        try {
            var seen = new HashSet<Set<String>>();
            for (int others = 0; others < MOST_OTHERS; others++) {
                var opened = new CountDownLatch(others);
                var enough = new CountDownLatch(1);
                for (int i = 0; i < others; i++) {
                    hold(database, threads, opened, enough);
                }
                opened.await();
                seen.add(database.read(notes::texts));
                enough.countDown();
            }
            return seen;
        } finally {
            threads.shutdown();
        }
    }

    private void hold(Database database, ExecutorService threads, CountDownLatch opened, CountDownLatch enough) {
        threads.submit(() -> database.<Set<String>>read(tx -> {
            var texts = notes.texts(tx);
            opened.countDown();
            try {
                enough.await();
            } catch (InterruptedException asked) {
                Thread.currentThread().interrupt();
            }
            return texts;
        }));
    }
}
