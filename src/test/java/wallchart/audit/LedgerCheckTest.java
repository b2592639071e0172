package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** What the owner of the tables does to the ledger behind its back is found. */
class LedgerCheckTest {

    @TempDir
    private Path folder;

    private final LedgerCheck check = new LedgerCheck(List.of());
    private Checkpoints checkpoints;

    @BeforeEach
    void a_folder() {
        checkpoints = new Checkpoints(folder.resolve("ledger"));
    }

    private Verification after(String tampering) throws Exception {
        var settings = TestDatabases.inMemory();
        try (var database = Database.open(settings, Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            for (int i = 1; i <= 5; i++) {
                var act = Act.of("act-done", "thing/" + i, "\"why\"\n\u0001\u00e9", Map.of("number", i));
                var event = database.<Event>write(Actor.system("test"), tx -> new Ledger().append(tx, act));
                assertThat(ChainText.text(event)).isEqualTo(LedgerEncoding.text(event));
                if (i > 3) {
                    checkpoints.add(event.seq(), event.hash(), event.at());
                }
            }
            try (var owner = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                    var statement = owner.createStatement()) {
                statement.execute("DROP TRIGGER audit_event_append_only");
                statement.execute(tampering);
            }
            return database.read(tx -> check.verify(tx, checkpoints));
        }
    }

    @Test
    void an_untouched_ledger_is_sound() throws Exception {
        assertThat(after("SELECT 1")).isInstanceOfSatisfying(Verification.Sound.class, sound -> {
            assertThat(sound.events()).isEqualTo(5);
            assertThat(sound.checkpoint().orElseThrow().seq()).isEqualTo(5);
            assertThat(sound.notes()).isEmpty();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE audit_event SET reason = 'x' WHERE seq = 2",
                "UPDATE audit_event SET at = at - INTERVAL '1' DAY WHERE seq = 2",
                "UPDATE audit_event SET details = '{\"number\": 2}' WHERE seq = 2",
                "UPDATE audit_event SET prev = REPEAT('a', 64) WHERE seq = 2",
                "DELETE FROM audit_event WHERE seq = 2",
            })
    void a_changed_event_is_named(String tampering) throws Exception {
        assertThat(after(tampering))
                .isInstanceOfSatisfying(Verification.Doubtful.class, doubt -> assertThat(doubt.seq())
                        .isEqualTo(2));
    }

    @Test
    void a_cut_tail_is_found_by_the_checkpoint() throws Exception {
        assertThat(after("DELETE FROM audit_event WHERE seq = 5"))
                .isEqualTo(new Verification.Doubtful(
                        5,
                        "the ledger ends with event 4, but at 2026-03-02T08:00:00Z it was signed that there is event 5:"
                                + " events were removed, or an older database was restored"));
    }
}
