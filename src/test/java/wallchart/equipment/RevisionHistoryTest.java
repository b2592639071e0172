package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.audit.Event;

/** What the ledger says of an entered measurement. */
class RevisionHistoryTest {

    private static RevisionHistory told(String details) {
        var event = new Event(
                1,
                Instant.EPOCH,
                "physicist",
                "physicist",
                "equipment-installed",
                "r1/equipment/1",
                Optional.of("r1"),
                "yearly measurement",
                details,
                Optional.empty(),
                Event.NONE_BEFORE,
                "");
        var revision = new RoomRevision(1, "sha256:", Instant.EPOCH, "physicist", aRoom().room());
        return new RevisionHistory(revision, Optional.of(event));
    }

    @Test
    void what_was_confirmed_is_told_by_its_codes() {
        assertThat(told("{\"confirmed\":[\"half-value-layer\",\"output-at-80\"]}")
                        .confirmed())
                .containsExactly("half-value-layer", "output-at-80");
        assertThat(told("{}").confirmed()).isEmpty();
    }

    @Test
    void an_older_event_names_the_tube_voltages_alone() {
        assertThat(told("{\"confirmedKV\":[\"80\",\"62.5\"]}").confirmed())
                .containsExactly("output-at-80", "output-at-62.5");
    }
}
