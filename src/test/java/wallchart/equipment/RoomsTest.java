package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

class RoomsTest extends OnEveryDatabase {

    private static final Actor PHYSICIST = Actor.person(3, "physicist", "physicist");

    private Rooms rooms;

    @BeforeEach
    void no_rooms_yet() {
        rooms = new Rooms(database());
    }

    @Test
    void a_department_begins_without_rooms() {
        assertThat(rooms.list()).isEmpty();
        assertThat(rooms.find("r1")).isEmpty();
        assertThat(rooms.inForce("r1", Instant.parse(START))).isEmpty();
    }

    @Test
    void installed_equipment_is_read_back_as_it_was_written() {
        var installed = (Installation.Installed) rooms.install(PHYSICIST, aRoom().document());
        assertThat(installed.revision().number()).isOne();
        assertThat(installed.revision().digest()).matches("sha256:[0-9a-f]{64}");
        assertThat(installed.revision().installedBy()).isEqualTo("physicist");
        assertThat(rooms.find("r1")).contains(installed.revision().room());
        assertThat(new Rooms(database()).revisions("r1")).containsExactly(installed.revision());
        assertThat(installed.revision().room().grids()).isEqualTo(aRoom().room().grids());
        assertThat(installed.revision().room().supports())
                .isEqualTo(aRoom().room().supports());
    }

    @Test
    void the_same_document_again_is_no_new_revision() {
        rooms.install(PHYSICIST, aRoom().document());
        clock().advance(Duration.ofDays(1));
        rooms.install(PHYSICIST, aRoom().document());
        assertThat(rooms.revisions("r1")).hasSize(1);
    }

    @Test
    void a_past_day_is_answered_with_the_equipment_of_that_day() {
        rooms.install(PHYSICIST, aRoom().document());
        var first = clock().instant();
        clock().advance(Duration.ofDays(1));
        rooms.install(PHYSICIST, aRoom().withName("Room 1, new tube").document());
        assertThat(rooms.find("r1").orElseThrow().name()).isEqualTo("Room 1, new tube");
        assertThat(rooms.inForce("r1", first).orElseThrow().name()).isEqualTo("Room 1");
        assertThat(rooms.inForce("r1", first.minusNanos(1000))).isEmpty();
        assertThat(rooms.inForce("r1", clock().instant()).orElseThrow().name()).isEqualTo("Room 1, new tube");
        assertThat(rooms.revisions("r1")).extracting(RoomRevision::number).containsExactly(1, 2);
    }

    @Test
    void impossible_equipment_is_not_installed() {
        assertThat(rooms.install(PHYSICIST, aRoom().withId("R 1").document()))
                .isInstanceOfSatisfying(Installation.Refused.class, refused -> assertThat(refused.problems())
                        .extracting(EquipmentReading.Problem::field)
                        .containsExactly("/room"));
        assertThat(rooms.list()).isEmpty();
    }

    @Test
    void rooms_are_listed_by_id() {
        for (var id : new String[] {"r2", "r10", "r1"}) {
            rooms.install(PHYSICIST, aRoom().withId(id).document());
        }
        assertThat(rooms.list()).extracting(Room::id).containsExactly("r1", "r10", "r2");
    }

    /** Reading every revision again at each entry would cost more with each year of measurements. */
    @Test
    void an_entry_reads_the_new_revision_alone() {
        var rooms = new Rooms(database());
        rooms.install(PHYSICIST, aRoom().document());
        var first = rooms.revisions("r1").get(0);
        rooms.install(PHYSICIST, aRoom().withName("Repainted").document());
        rooms.replace(PHYSICIST, 2, aRoom().withName("Painted again").document(), "a new plan", Map.of());
        assertThat(rooms.revisions("r1")).hasSize(3).first().isSameAs(first);
        assertThat(rooms.find("r1").orElseThrow().name()).isEqualTo("Painted again");
    }

    @Test
    void what_another_node_installed_is_seen_after_a_refresh() {
        var elsewhere = new Rooms(database());
        rooms.install(PHYSICIST, aRoom().document());
        assertThat(elsewhere.find("r1")).isEmpty();
        elsewhere.refresh();
        assertThat(elsewhere.find("r1")).isPresent();
    }

    @Test
    void what_is_written_alongside_belongs_to_the_same_act() {
        assertThatThrownBy(() -> rooms.install(PHYSICIST, aRoom().document(), "", (tx, revision) -> {
                    throw new IllegalStateException("no event, no equipment");
                }))
                .hasMessage("no event, no equipment");
        rooms.refresh();
        assertThat(rooms.list()).isEmpty();
    }

    @Test
    void a_revision_is_replaced_by_whoever_saw_the_newest() {
        rooms.install(PHYSICIST, aRoom().document());
        var second =
                rooms.replace(PHYSICIST, 1, aRoom().withName("Room 1, new tube").document(), "tube replaced", Map.of());
        assertThat(second.orElseThrow().number()).isEqualTo(2);
        assertThat(rooms.find("r1").orElseThrow().name()).isEqualTo("Room 1, new tube");
        assertThat(rooms.replace(PHYSICIST, 1, aRoom().withName("Late").document(), "too late", Map.of()))
                .isEmpty();
        assertThat(rooms.revisions("r1")).hasSize(2);
    }

    @Test
    void the_history_tells_why_each_state_was_entered() {
        rooms.install(PHYSICIST, aRoom().document(), "loaded from a file");
        rooms.replace(PHYSICIST, 1, aRoom().withName("Room one").document(), "renamed on the plan", Map.of("rows", 3));
        var history = rooms.history("r1");
        assertThat(history)
                .extracting(RevisionHistory::reason)
                .containsExactly("loaded from a file", "renamed on the plan");
        assertThat(history).extracting(RevisionHistory::revision).isEqualTo(rooms.revisions("r1"));
        assertThat(history.get(1).event().orElseThrow().detail("rows")).contains("3");
        assertThat(rooms.history("r2")).isEmpty();
    }

    @Test
    void a_document_is_read_back_as_it_was_written() {
        rooms.install(PHYSICIST, aRoom().document());
        assertThat(EquipmentEncoding.canonical(rooms.findDocument("r1", 1).orElseThrow()))
                .isEqualTo(EquipmentEncoding.canonical(aRoom().document()));
        assertThat(rooms.findDocument("r1", 2)).isEmpty();
    }

    /** Written out by hand after RFC 8785: keys in order, no blanks, numbers in their shortest form. */
    @Test
    void a_document_is_stored_as_canonical_json() {
        var document = new EquipmentDocument(
                "r1",
                "Room \"1\"",
                new EquipmentDocument.GeneratorPart(
                        "six-pulse",
                        new EquipmentDocument.StationsPart(
                                EquipmentFixtures.numbers("50 62.50"), null, null, null, null),
                        null,
                        null,
                        EquipmentFixtures.number("3.0"),
                        null),
                null,
                java.util.List.of(),
                null,
                null);
        assertThat(EquipmentEncoding.canonical(document).text())
                .isEqualTo("{\"generator\":{\"kV\":{\"stations\":[50,62.5]},\"shortestTimeMs\":3,"
                        + "\"waveform\":\"six-pulse\"},\"grids\":[],\"name\":\"Room \\\"1\\\"\",\"room\":\"r1\"}");
    }
}
