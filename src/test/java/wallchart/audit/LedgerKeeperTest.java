package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Actor;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;

class LedgerKeeperTest extends OnEveryDatabase {

    private static final Act ACT = Act.of("act-done", "thing/1", "", Map.of());

    @TempDir
    private Path folder;

    private void append(wallchart.store.Database database) {
        database.run(Actor.system("test"), tx -> new Ledger().append(tx, ACT));
    }

    @Test
    void what_was_entered_is_signed_at_the_latest_when_the_service_stops() throws Exception {
        append(database());
        LedgerKeeper.start(database(), new Checkpoints(folder)).close();
        append(database());
        LedgerKeeper.start(database(), new Checkpoints(folder)).close();
        var reading = (Checkpoints.Reading.Signed) new Checkpoints(folder).read();
        assertThat(reading.newest().orElseThrow().seq()).isEqualTo(2);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("ledger.key"))))
                .isEqualTo("rw-------");
    }

    @Test
    void an_older_database_beside_newer_checkpoints_stops_the_ledger() {
        append(database());
        LedgerKeeper.start(database(), new Checkpoints(folder)).close();
        var older = database(Mode.SITE);
        LedgerKeeper.start(older, new Checkpoints(folder)).close();
        assertThatThrownBy(() -> append(older)).isInstanceOf(LedgerStopped.class);
    }

    @Test
    void a_checkpoint_that_was_changed_is_found() throws Exception {
        append(database());
        LedgerKeeper.start(database(), new Checkpoints(folder)).close();
        var file = folder.resolve("checkpoints.ndjson");
        Files.writeString(file, Files.readString(file).replace("2026-03-02", "2026-03-01"));
        assertThat(database().<Verification>read(tx -> new LedgerCheck(List.of()).verify(tx, new Checkpoints(folder))))
                .isInstanceOfSatisfying(Verification.Doubtful.class, doubt -> assertThat(doubt.what())
                        .contains("is not what was signed there"));
    }

    @Test
    void a_file_of_checkpoints_that_is_changed_while_the_service_runs_stops_the_ledger_at_the_next_beat()
            throws Exception {
        var keeper = new LedgerKeeper(database(), new CheckpointWatch(new Checkpoints(folder)));
        append(database());
        keeper.keep();
        append(database());
        keeper.keep();
        keeper.keep();
        var file = folder.resolve("checkpoints.ndjson");
        var lines = Files.readAllLines(file);
        assertThat(lines).hasSize(2);
        Files.writeString(file, lines.get(0) + "\n");
        keeper.keep();
        assertThatThrownBy(() -> append(database()))
                .isInstanceOf(LedgerStopped.class)
                .hasMessageContaining("2 of them were changed, removed or replaced");
    }
}
