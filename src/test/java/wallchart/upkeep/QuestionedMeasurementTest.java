package wallchart.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aSteadyOutput;
import static wallchart.equipment.EquipmentFixtures.anOutputAt;
import static wallchart.equipment.EquipmentFixtures.number;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentEdit;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.Rooms;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.Filtration;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;
import wallchart.upkeep.EquipmentOutcome.Entered;
import wallchart.upkeep.EquipmentOutcome.Possible;
import wallchart.upkeep.EquipmentOutcome.Questioned;
import wallchart.upkeep.EquipmentOutcome.Unreadable;

/** Slips in a measurement that is entered, what is asked back, and what whoever answers reads. */
class QuestionedMeasurementTest extends OnEveryDatabase {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();
    private static final Actor PHYSICIST = Actor.person(3, "physicist", "physicist");
    private static final String DAY = "2026-02-20";

    private Rooms rooms;
    private EquipmentDesk desk;

    @BeforeEach
    void a_measured_room_and_one_that_nobody_measured() {
        rooms = new Rooms(database());
        rooms.install(
                PHYSICIST, aRoom().withOutput(aSteadyOutput("2026-01-14", "1")).document());
        rooms.install(PHYSICIST, aRoom().withId("r2").uncalibrated().document());
        desk = new EquipmentDesk(rooms, new Charts(database(), rooms, ChartRules.adultsOnly()), PHYSICS, clock());
    }

    private EquipmentOutcome enter(String room, OutputPart output, String... confirmed) {
        return desk.enter(PHYSICIST, room, 1, entry(output, confirmed));
    }

    private static EquipmentEntry entry(OutputPart output, String... confirmed) {
        return new EquipmentEntry(
                new EquipmentEdit.Output(output),
                "yearly measurement of the tube",
                List.of(confirmed),
                Optional.empty());
    }

    private static List<String> codes(EquipmentOutcome outcome) {
        return ((Questioned) outcome)
                .questions().stream().map(asked -> asked.question().code()).toList();
    }

    private static List<Problem> problems(EquipmentOutcome outcome) {
        return ((Unreadable) outcome).problems();
    }

    private static OutputPart withHalfValueLayer(String millimetres, String kV) {
        var sound = aSteadyOutput(DAY, "1");
        return new OutputPart(
                sound.measuredOn(),
                sound.totalFiltrationMmAl(),
                null,
                number(millimetres),
                number(kV),
                sound.uncertaintyPercent(),
                sound.microGyPerMAsAtOneMetre());
    }

    private static OutputPart withUncertainty(String percent) {
        var sound = aSteadyOutput(DAY, "1");
        return new OutputPart(
                sound.measuredOn(),
                sound.totalFiltrationMmAl(),
                null,
                sound.hvlMmAl(),
                sound.hvlAtKV(),
                number(percent),
                sound.microGyPerMAsAtOneMetre());
    }

    /** mR for uGy, a slip of three digits either way, and a measurement at 60 cm written as one at 1 m. */
    @ParameterizedTest
    @ValueSource(strings = {"0.1142", "0.001", "1000", "2.8"})
    void an_output_of_the_wrong_size_is_asked_about_in_a_room_that_was_never_measured(String slip) {
        var outcome = enter("r2", aSteadyOutput(DAY, slip));
        assertThat(codes(outcome)).containsExactly("output-size");
        assertThat(((Questioned) outcome).questions().get(0).field()).isEqualTo("/microGyPerMAsAtOneMetre");
        assertThat(rooms.revisions("r2")).hasSize(1);
        assertThat(enter("r2", aSteadyOutput(DAY, slip), "output-size")).isInstanceOf(Entered.class);
    }

    @ParameterizedTest
    @CsvSource({"1.35, output-step", "0.72, output-step", "2.8, output-step output-size"})
    void an_output_far_from_the_one_in_force_is_asked_about(String factor, String expected) {
        var outcome = enter("r1", aSteadyOutput(DAY, factor));
        assertThat(codes(outcome)).containsExactly(expected.split(" "));
        assertThat(((Questioned) outcome).questions().get(0).question().sentence())
                .contains("those measured 2026-01-14")
                .contains("uGy/mAs at ");
        assertThat(enter("r1", aSteadyOutput(DAY, factor), expected.split(" "))).isInstanceOf(Entered.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.25", "0.8"})
    void a_tube_that_ages_is_not(String factor) {
        assertThat(enter("r1", aSteadyOutput(DAY, factor))).isInstanceOf(Entered.class);
    }

    @ParameterizedTest
    @CsvSource({"3.1, 100", "3.9, 80", "4.5, 80", "6.0, 80", "0.32, 80", "1.0, 80"})
    void a_half_value_layer_that_is_a_slip_is_asked_about_where_it_stands(String millimetres, String kV) {
        var outcome = (Questioned) enter("r1", withHalfValueLayer(millimetres, kV));
        assertThat(codes(outcome)).contains("half-value-layer").noneMatch(code -> code.startsWith("output-"));
        assertThat(outcome.questions().get(0).field()).isEqualTo("/hvlMmAl");
        assertThat(outcome.notes())
                .contains("the single outputs cannot be judged until the half-value layer is right or confirmed");
    }

    @Test
    void exactly_what_is_asked_is_confirmed_in_any_order() {
        var slip = withHalfValueLayer("1.0", "80");
        assertThat(codes(enter("r1", slip))).containsExactly("half-value-layer", "half-value-layer-minimum");
        assertThat(enter("r1", slip, "half-value-layer")).isInstanceOf(Questioned.class);
        assertThat(problems(enter("r1", slip, "half-value-layer", "half-value-layer-minimum", "output-size")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.field()).isEqualTo("/confirmed"));
        assertThat(enter("r1", slip, "half-value-layer-minimum", "half-value-layer"))
                .isInstanceOf(Entered.class);
        assertThat(rooms.history("r1").get(1).confirmed())
                .containsExactly("half-value-layer", "half-value-layer-minimum");
    }

    /** Who stands by a half-value layer stands by the filtration that it gives, and is asked what then does not fit. */
    @Test
    void whoever_confirms_a_half_value_layer_is_asked_about_the_outputs_beside_it() {
        var slip = withHalfValueLayer("6.0", "80");
        assertThat(codes(enter("r1", slip))).containsExactly("half-value-layer");
        var then = codes(enter("r1", slip, "half-value-layer"));
        assertThat(then).startsWith("half-value-layer").hasSizeGreaterThan(1);
        assertThat(enter("r1", slip, then.toArray(String[]::new))).isInstanceOf(Entered.class);
    }

    @Test
    void tube_voltages_side_by_side_are_refused_with_the_limit() {
        assertThat(problems(enter("r1", anOutputAt(DAY, "80 54.8", "80.1 54.9", "80.2 55"))))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.field()).isEqualTo("/microGyPerMAsAtOneMetre");
                    assertThat(problem.message()).contains("1.5 times the lowest");
                });
    }

    @ParameterizedTest
    @CsvSource({"0.5, false", "1, true", "50, true", "51, false", "500, false"})
    void an_uncertainty_is_one_to_fifty_percent(String percent, boolean taken) {
        var outcome = enter("r1", withUncertainty(percent));
        if (taken) {
            assertThat(outcome).isInstanceOf(Entered.class);
        } else {
            assertThat(problems(outcome)).singleElement().satisfies(problem -> assertThat(problem.field())
                    .isEqualTo("/uncertaintyPercent"));
        }
    }

    @Test
    void whoever_enters_or_tries_out_reads_how_the_tube_fits_and_the_event_keeps_it() {
        var sound = aSteadyOutput(DAY, "0.95");
        var tried = ((Possible) desk.tryOut("r1", entry(sound))).effects().calibration();
        assertThat(tried).anyMatch(sentence -> sentence.startsWith("fitted: "));
        var entered = (Entered) enter("r1", sound);
        assertThat(entered.effects().calibration()).isEqualTo(tried);
        var event = rooms.history("r1").get(1).event().orElseThrow();
        assertThat(event.detailList("calibration")).isEqualTo(tried);
    }

    @Test
    void what_was_confirmed_is_said_as_confirmed_also_by_the_revision_later() {
        var entered = (Entered) enter("r1", aSteadyOutput(DAY, "1.35"), "output-step");
        assertThat(entered.effects().calibration().get(0)).contains("x 1.35").endsWith(": confirmed");
        assertThat(desk.effects(entered.after()).orElseThrow().calibration())
                .isEqualTo(entered.effects().calibration());
    }

    @Test
    void the_largest_change_of_output_says_at_which_kv_and_the_fitted_filtration_before_and_after() {
        var entered = (Entered)
                enter("r1", anOutputAt(DAY, "50 19.2", "60 29.9", "80 54.8", "100 83.0", "120 103.0", "150 156.5"));
        var largest = entered.effects().largestOutput().orElseThrow();
        assertThat(largest.kilovolts()).isEqualTo(120);
        assertThat(largest.filtration()).isEqualTo(Filtration.aluminium("3"));
        var fitted = entered.effects().fitted();
        assertThat(fitted.before()).isPresent().isEqualTo(fitted.after());
        var event = rooms.history("r1").get(1).event().orElseThrow();
        assertThat(event.detail("largestOutputRatioAt")).contains("120 kV, 3 mm Al");
        var harder = (Entered) desk.enter(PHYSICIST, "r1", 2, entry(withHalfValueLayer("3.3", "80")));
        assertThat(harder.effects().fitted().after().orElseThrow().aluminiumMillimetres())
                .isGreaterThan(harder.effects().fitted().before().orElseThrow().aluminiumMillimetres());
    }

    @Test
    void questions_of_an_entered_measurement_are_not_asked_again_when_something_else_is_entered() {
        enter("r1", aSteadyOutput(DAY, "1.35"), "output-step");
        var inForce = rooms.findDocument("r1", 2).orElseThrow();
        var renamed = aRoom().withName("Room one").withOutput(inForce.tube().output());
        var whole = new EquipmentEntry(
                new EquipmentEdit.Whole(renamed.document()), "renamed on the new plan", List.of(), Optional.empty());
        assertThat(desk.enter(PHYSICIST, "r1", 2, whole)).isInstanceOf(Entered.class);
        assertThat(Arrays.asList(rooms.revisions("r1").get(2).room().name())).containsExactly("Room one");
    }
}
