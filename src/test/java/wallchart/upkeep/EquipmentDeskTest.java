package wallchart.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aSteadyOutput;
import static wallchart.equipment.EquipmentFixtures.anOutputAt;
import static wallchart.equipment.EquipmentFixtures.number;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentEdit;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.RevisionHistory;
import wallchart.equipment.RoomBuilder;
import wallchart.equipment.Rooms;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeCalibration;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;
import wallchart.upkeep.EquipmentOutcome.Entered;
import wallchart.upkeep.EquipmentOutcome.OlderMeasurement;
import wallchart.upkeep.EquipmentOutcome.Possible;
import wallchart.upkeep.EquipmentOutcome.Questioned;
import wallchart.upkeep.EquipmentOutcome.Stale;
import wallchart.upkeep.EquipmentOutcome.UnknownPart;
import wallchart.upkeep.EquipmentOutcome.Unreadable;

/** What the medical physicist may enter, what is asked back, and who wins where two enter at once. */
class EquipmentDeskTest extends OnEveryDatabase {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();
    private static final Actor PHYSICIST = Actor.person(3, "physicist", "physicist");
    private static final String REASON = "yearly measurement of the tube";
    private static final int RIVALS = 4;

    private Rooms rooms;
    private EquipmentDesk desk;

    @BeforeEach
    void a_room_with_equipment() {
        rooms = new Rooms(database());
        rooms.install(PHYSICIST, aSoundRoom().document());
        var charts = new Charts(database(), rooms, ChartRules.adultsOnly());
        desk = new EquipmentDesk(rooms, charts, PHYSICS, clock());
    }

    private static RoomBuilder aSoundRoom() {
        return aRoom().withOutput(aSteadyOutput("2026-01-14", "1"));
    }

    private static EquipmentEntry measured(OutputPart output, String... confirmed) {
        return new EquipmentEntry(new EquipmentEdit.Output(output), REASON, List.of(confirmed), Optional.empty());
    }

    private static List<String> fields(EquipmentOutcome outcome) {
        return ((Unreadable) outcome).problems().stream().map(Problem::field).toList();
    }

    @Test
    void a_measurement_becomes_the_next_revision_with_its_reason() {
        var entered = (Entered) desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-02-20", "0.95")));
        assertThat(entered.after().number()).isEqualTo(2);
        assertThat(entered.after().room().tube().output().orElseThrow().measuredOn())
                .isEqualTo("2026-02-20");
        assertThat(entered.effects().largestOutput().orElseThrow().ratio()).isBetween(0.949, 0.951);
        var told = rooms.history("r1").get(1);
        assertThat(told.reason()).isEqualTo(REASON);
        assertThat(told.event().orElseThrow().actor()).isEqualTo("physicist");
        assertThat(told.event().orElseThrow().detail("largestOutputRatio").orElseThrow())
                .startsWith("0.9");
        assertThat(told.event().orElseThrow().detail("affectedRows")).contains("0");
    }

    @Test
    void trying_out_says_the_same_and_writes_nothing() {
        var entry = measured(aSteadyOutput("2026-02-20", "0.95"));
        var possible = (Possible) desk.tryOut("r1", entry);
        assertThat(rooms.history("r1")).hasSize(1);
        var entered = (Entered) desk.enter(PHYSICIST, "r1", 1, entry);
        assertThat(possible.effects()).isEqualTo(entered.effects());
        assertThat(desk.effects(entered.after())).contains(entered.effects());
        assertThat(desk.effects(entered.before())).isEmpty();
    }

    @Test
    void what_is_in_force_already_is_no_new_revision() {
        var same = new EquipmentEntry(
                new EquipmentEdit.Whole(aSoundRoom().document()), REASON, List.of(), Optional.empty());
        var entered = (Entered) desk.enter(PHYSICIST, "r1", 1, same);
        assertThat(entered.after()).isEqualTo(entered.before());
        assertThat(rooms.revisions("r1")).hasSize(1);
    }

    @Test
    void whoever_saw_an_older_revision_is_told_the_newest() {
        desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-02-20", "0.95")));
        var late = desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-02-21", "0.96")));
        assertThat(((Stale) late).newest().number()).isEqualTo(2);
        assertThat(rooms.revisions("r1")).hasSize(2);
    }

    /** Two desks of one process and two that remember rooms of their own, as two nodes do: one wins, whatever they remember. */
    @Test
    void of_rivals_who_saw_the_same_revision_exactly_one_wins() {
        for (int round = 1; round <= 5; round++) {
            int seen = round;
            var start = new CyclicBarrier(RIVALS);
            var outcomes = IntStream.range(0, RIVALS)
                    .mapToObj(rival -> CompletableFuture.supplyAsync(() -> rival(start, seen, rival)))
                    .toList()
                    .stream()
                    .map(CompletableFuture::join)
                    .toList();
            assertThat(outcomes).filteredOn(Entered.class::isInstance).hasSize(1);
            assertThat(outcomes)
                    .filteredOn(Stale.class::isInstance)
                    .hasSize(RIVALS - 1)
                    .allSatisfy(
                            lost -> assertThat(((Stale) lost).newest().number()).isEqualTo(seen + 1));
            rooms.refresh();
            assertThat(rooms.history("r1"))
                    .hasSize(seen + 1)
                    .extracting(RevisionHistory::event)
                    .allMatch(Optional::isPresent);
        }
    }

    private EquipmentOutcome rival(CyclicBarrier start, int seen, int rival) {
        var ofNode = rival % 2 == 0 ? rooms : new Rooms(database());
        var charts = new Charts(database(), ofNode, ChartRules.adultsOnly());
        var own = new EquipmentDesk(ofNode, charts, PHYSICS, clock());
        var entry = measured(aSteadyOutput("2026-02-20", "1.0" + seen + rival));
        try {
            start.await();
        } catch (Exception interrupted) {
            throw new IllegalStateException(interrupted);
        }
        return own.enter(PHYSICIST, "r1", seen, entry);
    }

    @Test
    void a_reason_of_a_few_letters_is_none() {
        var silent = new EquipmentEntry(
                new EquipmentEdit.Output(aSteadyOutput("2026-02-20", "0.95")),
                " new   tube ",
                List.of(),
                Optional.empty());
        assertThat(fields(desk.enter(PHYSICIST, "r1", 1, silent))).containsExactly("/reason");
        assertThat(desk.tryOut("r1", silent)).isInstanceOf(Possible.class);
    }

    @Test
    void what_is_wrong_is_told_where_it_stands_in_the_part_that_was_entered() {
        assertThat(fields(
                        desk.enter(PHYSICIST, "r1", 1, measured(anOutputAt("2026-02-20", "50 20", "60 -1", "80 50")))))
                .containsExactly("/microGyPerMAsAtOneMetre/1");
        var grid = new EquipmentEdit.MeasuredGrid(
                "g8",
                new RangePart(number("110"), number("180")),
                List.of(new GridFactorPart(number("70"), number("0.5"))));
        assertThat(fields(
                        desk.enter(PHYSICIST, "r1", 1, new EquipmentEntry(grid, REASON, List.of(), Optional.empty()))))
                .containsExactly("");
    }

    @Test
    void a_day_that_has_not_come_anywhere_is_no_day_of_a_measurement() {
        clock().set("2026-03-02T09:59:00Z"); // nowhere the 3rd yet
        assertThat(fields(desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-03-03", "1.01")))))
                .containsExactly("/measuredOn");
        clock().set("2026-03-02T10:00:00Z"); // in Kiritimati it is, UTC+14
        assertThat(desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-03-03", "1.01"))))
                .isInstanceOf(Entered.class);
    }

    @Test
    void two_points_are_no_new_measurement() {
        assertThat(fields(desk.enter(PHYSICIST, "r1", 1, measured(anOutputAt("2026-02-20", "60 29.0", "100 79.9")))))
                .containsExactly("/microGyPerMAsAtOneMetre");
    }

    @Test
    void two_points_that_are_in_force_already_stay_when_something_else_is_entered() {
        var old = anOutputAt("2026-01-14", "60 29.0", "100 79.9");
        rooms.install(PHYSICIST, aRoom().withOutput(old).document());
        var renamed = new EquipmentEdit.Whole(
                aRoom().withName("Room one").withOutput(old).document());
        assertThat(desk.enter(PHYSICIST, "r1", 2, new EquipmentEntry(renamed, REASON, List.of(), Optional.empty())))
                .isInstanceOf(Entered.class);
        assertThat(desk.calibration(rooms.revisions("r1").get(2)).reason().orElseThrow())
                .contains("60 kV and 100 kV");
    }

    @Test
    void an_older_measurement_replaces_a_newer_one_only_for_whoever_names_that() {
        var older = aSteadyOutput("2026-01-10", "1.02");
        var refused = (OlderMeasurement) desk.enter(PHYSICIST, "r1", 1, measured(older));
        assertThat(refused.inForce()).isEqualTo("2026-01-14");
        assertThat(desk.enter(PHYSICIST, "r1", 1, replacing(older, "2026-01-13")))
                .isInstanceOf(OlderMeasurement.class);
        assertThat(desk.enter(PHYSICIST, "r1", 1, replacing(older, "2026-01-14")))
                .isInstanceOf(Entered.class);
        assertThat(fields(desk.enter(PHYSICIST, "r1", 2, replacing(aSteadyOutput("2026-02-20", "1"), "2026-01-10"))))
                .containsExactly("/replacesMeasuredOn");
    }

    private static EquipmentEntry replacing(OutputPart output, String day) {
        return new EquipmentEntry(
                new EquipmentEdit.Output(output), REASON, List.of(), Optional.of(LocalDate.parse(day)));
    }

    /** 80 kV is 18 % over what the other points follow. */
    private static OutputPart anOddPoint() {
        return anOutputAt(
                "2026-02-20", "50 19.2", "60 29.9", "70 41.7", "80 64.7", "100 83.0", "120 112.0", "150 156.5");
    }

    @Test
    void a_point_more_than_a_tenth_off_the_fit_is_questioned() {
        var outcome = (Questioned) desk.enter(PHYSICIST, "r1", 1, measured(anOddPoint()));
        assertThat(outcome.questions()).singleElement().satisfies(asked -> {
            assertThat(asked.field()).isEqualTo("/microGyPerMAsAtOneMetre/3");
            assertThat(asked.question().code()).isEqualTo("output-at-80");
        });
        assertThat(desk.tryOut("r1", measured(anOddPoint()))).isEqualTo(outcome);
        assertThat(rooms.revisions("r1")).hasSize(1);
    }

    @Test
    void it_is_taken_when_exactly_it_is_confirmed_and_the_event_says_so() {
        assertThat(desk.enter(PHYSICIST, "r1", 1, measured(anOddPoint(), "output-at-100")))
                .isInstanceOf(Questioned.class);
        assertThat(fields(desk.enter(PHYSICIST, "r1", 1, measured(anOddPoint(), "output-at-80", "output-at-100"))))
                .containsExactly("/confirmed");
        var entered = (Entered) desk.enter(PHYSICIST, "r1", 1, measured(anOddPoint(), "output-at-80"));
        assertThat(rooms.history("r1").get(1).confirmed()).containsExactly("output-at-80");
        assertThat(desk.calibration(entered.after()).confirmed()).containsExactly("output-at-80");
    }

    @Test
    void the_whole_document_is_asked_the_same_questions() {
        var whole = new EquipmentEdit.Whole(aRoom().withOutput(anOddPoint()).document());
        var outcome = (Questioned)
                desk.enter(PHYSICIST, "r1", 1, new EquipmentEntry(whole, REASON, List.of(), Optional.empty()));
        assertThat(outcome.questions().get(0).field()).isEqualTo("/tube/output/microGyPerMAsAtOneMetre/3");
    }

    @Test
    void a_questioned_measurement_that_is_in_force_is_not_questioned_again() {
        rooms.install(PHYSICIST, aRoom().withOutput(anOddPoint()).document());
        var renamed = new EquipmentEdit.Whole(
                aRoom().withName("Room one").withOutput(anOddPoint()).document());
        assertThat(desk.enter(PHYSICIST, "r1", 2, new EquipmentEntry(renamed, REASON, List.of(), Optional.empty())))
                .isInstanceOf(Entered.class);
    }

    @Test
    void what_nobody_asked_need_not_be_confirmed() {
        assertThat(fields(
                        desk.enter(PHYSICIST, "r1", 1, measured(aSteadyOutput("2026-02-20", "0.95"), "output-at-80"))))
                .containsExactly("/confirmed");
    }

    @Test
    void the_document_of_another_room_is_not_entered_here() {
        var elsewhere = new EquipmentEdit.Whole(aRoom().withId("r2").document());
        assertThat(fields(desk.enter(
                        PHYSICIST, "r1", 1, new EquipmentEntry(elsewhere, REASON, List.of(), Optional.empty()))))
                .containsExactly("/room");
        assertThat(rooms.find("r2")).isEmpty();
    }

    @Test
    void factors_and_focal_range_of_a_grid_are_entered_and_its_label_stays() {
        var edit = new EquipmentEdit.MeasuredGrid(
                "g8",
                new RangePart(number("120"), number("170")),
                List.of(new GridFactorPart(number("80"), number("3.1"))));
        var entered =
                (Entered) desk.enter(PHYSICIST, "r1", 1, new EquipmentEntry(edit, REASON, List.of(), Optional.empty()));
        var grid = entered.after().room().findGrid("g8").orElseThrow();
        assertThat(grid.factorAt(60)).isEqualTo(3.1);
        assertThat(grid.focalRange().orElseThrow()).hasToString("120 to 170 cm");
        assertThat(grid.focalDistance())
                .isEqualTo(entered.before().room().findGrid("g8").orElseThrow().focalDistance());
        var unknown = new EquipmentEdit.MeasuredGrid("g9", null, edit.factors());
        assertThat(desk.enter(PHYSICIST, "r1", 2, new EquipmentEntry(unknown, REASON, List.of(), Optional.empty())))
                .isEqualTo(new UnknownPart("grid g9", List.of("g10", "g8")));
    }

    @Test
    void a_calibration_says_what_the_half_value_layer_would_be() {
        var report = desk.calibration(rooms.revisions("r1").get(0));
        assertThat(report.fit()).isInstanceOf(TubeCalibration.class);
        assertThat(report.halfValueLayerFitted().orElseThrow()).isBetween(3.09, 3.11); // measured 3.1 mm Al
        assertThat(report.halfValueLayerStated()).isPresent();
        rooms.install(PHYSICIST, aRoom().uncalibrated().document());
        var bare = desk.calibration(rooms.revisions("r1").get(1));
        assertThat(bare.reason().orElseThrow()).contains("not measured");
        assertThat(bare.halfValueLayerStated()).isEmpty();
    }
}
