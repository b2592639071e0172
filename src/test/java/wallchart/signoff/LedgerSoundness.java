package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import wallchart.audit.Checkpoints;
import wallchart.audit.LedgerCheck;
import wallchart.audit.Verification;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.store.Database;

/** Holds all that a test left in a database against its ledger. */
final class LedgerSoundness {

    private LedgerSoundness() {}

    /** No gap, no event without its record, no record without its event. */
    static void assertSound(Database database) {
        assertThat(verify(database)).isInstanceOf(Verification.Sound.class);
    }

    static Verification verify(Database database) {
        var check = new LedgerCheck(List.of(Charts.records(), Rooms.records(), SignoffDesk.records()));
        try {
            var checkpoints = new Checkpoints(Files.createTempDirectory("ledger"));
            return database.<Verification>read(tx -> check.verify(tx, checkpoints));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
