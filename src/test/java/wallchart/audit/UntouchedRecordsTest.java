package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.print.SheetRegister;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;

/** Nobody is alarmed without cause: ledgers of varied histories, checked after every act, with all records and checkpoints. */
class UntouchedRecordsTest extends OnEveryDatabase {

    private static final int DEPARTMENTS = 5; // on each of two databases
    private static final int ACTS = 24;

    /** Every kind of record that the running service holds against its ledger. */
    static final List<RecordCheck> ALL_RECORDS = Stream.concat(
                    Stream.of(Charts.records(), Rooms.records(), SignoffDesk.records(), SheetRegister.records()),
                    People.records().stream())
            .toList();

    @TempDir
    private Path folder;

    @Test
    void more_than_two_hundred_untouched_ledgers_are_sound() {
        for (int seed = 1; seed <= DEPARTMENTS; seed++) {
            var database = database(Mode.SITE);
            var checkpoints = new Checkpoints(folder.resolve("department-" + seed));
            var trail = new AuditTrail(database, checkpoints, ALL_RECORDS);
            var department = new VariedDepartment(database, clock(), new Random(seed), trail);
            for (int act = 1; act <= ACTS; act++) {
                department.act();
                var found = trail.verify();
                assertThat(found).as("department " + seed + " after act " + act).isInstanceOf(Verification.Sound.class);
                sign(checkpoints, (Verification.Sound) found);
            }
        }
    }

    private void sign(Checkpoints checkpoints, Verification.Sound sound) {
        if (sound.checkpoint().map(Checkpoint::seq).orElse(0L) < sound.events()) {
            checkpoints.add(sound.events(), sound.head(), clock().instant());
        }
    }
}
