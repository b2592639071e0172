package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.equipment.EquipmentFixtures.aLargeSpot;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aSmallSpot;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.planning.PlanningFixtures.MODEL;
import static wallchart.planning.PlanningFixtures.MODELS;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.RULES;
import static wallchart.planning.PlanningFixtures.aTabletopRoom;
import static wallchart.planning.PlanningFixtures.chart;
import static wallchart.planning.PlanningFixtures.everything;
import static wallchart.planning.PlanningFixtures.transferred;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartContent;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowBuilder;
import wallchart.chart.RowKey;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.technique.Arrangement;

/** Rows of one room as they would be in another: lumbar spine AP, 75 kV, 25 mAs at 21 cm. */
class TransferTest {

    private static Room other() {
        return aRoom().withId("r2").withTube(tube("2.5", 0.5)).room();
    }

    /** A tube of that filtration with so many times the output of the fixtures' tube. */
    private static TubePart tube(String aluminium, double times) {
        var own = aTube().output();
        var points = own.microGyPerMAsAtOneMetre().stream()
                .map(point -> new OutputPointPart(
                        point.kV(), number(String.valueOf(point.output().doubleValue() * times))))
                .toList();
        var output = new OutputPart(
                own.measuredOn(),
                number(aluminium),
                null,
                own.hvlMmAl(),
                own.hvlAtKV(),
                own.uncertaintyPercent(),
                points);
        return new TubePart(number("12"), number(aluminium), null, List.of(aSmallSpot(), aLargeSpot()), output);
    }

    private static ProposedRow only(RowBuilder row, Room to) {
        return PlanningFixtures.only(transferred(ROOM, to, row.row()));
    }

    private static double factor(ProposedRow row, String name) {
        return row.factors().stream()
                .filter(factor -> factor.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void from_a_room_to_itself_nothing_changes() {
        var rows = new Row[] {
            aRow().row(),
            aRow().withBand(24, 30).withMAs("50").row(),
            aRow().of("CHEST", "pa").withAec(1, "100", Chamber.LEFT).row(),
        };
        var before = new ChartContent(List.of(rows), List.of());
        var proposal = transferred(ROOM, ROOM, everything(ROOM), before, rows);
        assertThat(proposal.rows()).hasSize(3).allMatch(row -> proposal.kind(row) == ChartProposal.Kind.SAME);
        assertThat(proposal.edits()).isZero();
        assertThat(proposal.rows()).flatExtracting(ProposedRow::factors).allSatisfy(factor -> assertThat(factor.value())
                .as(factor.name())
                .isCloseTo(1, within(1e-12)));
    }

    @Test
    void the_factors_shown_times_the_mas_of_the_row_are_the_exact_mas() {
        var proposed = only(aRow(), other());
        assertThat(proposed.factors())
                .extracting(Factor::name)
                .containsExactly("output", "beam", "grid", "distance", "target", "voltage");
        double product = 25;
        for (var factor : proposed.factors()) {
            product *= factor.value();
        }
        assertThat(proposed.exactMAs()).isCloseTo(product, within(1e-9));
    }

    @Test
    void the_receptor_signal_relative_to_the_target_is_the_same_in_both_rooms() {
        var to = other();
        var proposed = only(aRow(), to);
        var there = Arrangement.find(ROOM, aRow().row()).orElseThrow();
        var here = Arrangement.find(to, proposed.row()).orElseThrow();
        double kV = proposed.row().setting().kV().inKilovolts();
        double wanted = MODEL.signalPerMAs(there, 75, 21) * 25;
        assertThat(MODEL.signalPerMAs(here, kV, 21) * proposed.exactMAs()).isCloseTo(wanted, within(wanted * 1e-9));
    }

    @Test
    void half_the_output_of_the_same_beam_needs_twice_the_mas() {
        var half = aRoom().withId("r2").withTube(tube("3.0", 0.5)).room();
        var proposed = only(aRow(), half);
        assertThat(factor(proposed, "output")).isCloseTo(2, within(1e-9));
        assertThat(proposed.exactMAs()).isCloseTo(50, within(1e-6));
        assertThat(proposed.entranceMicroGy())
                .isCloseTo(proposed.origin().entranceMicroGy(), within(1e-6 * proposed.entranceMicroGy()));
    }

    @Test
    void a_target_twice_as_high_needs_twice_the_mas_and_a_target_of_the_row_keeps_its_ratio() {
        var cassette = everything(ROOM);
        var toPlates = new RoomTransfer(
                cassette.fromRoom(),
                1,
                Optional.empty(),
                List.of(),
                RoomTransfer.Scope.ALL,
                Map.of(),
                Map.of(),
                Map.of("dr1", "cr1"));
        var row = aRow().at(SupportKind.TABLETOP).withGrid("none").withReceptor("dr1", "18x24");
        var to = aTabletopRoom("r2", "110").room();
        var plates = PlanningFixtures.only(transferred(ROOM, to, toPlates, ChartContent.EMPTY, row.row()));
        assertThat(factor(plates, "target")).isCloseTo(250.0 / 400, within(1e-12));
        var own = PlanningFixtures.only(transferred(
                ROOM,
                to,
                toPlates,
                ChartContent.EMPTY,
                row.withTargetExposureIndex(200).row()));
        assertThat(own.row().setting().targetExposureIndex()).contains(125);
        assertThat(factor(own, "target")).isCloseTo(125.0 / 200, within(1e-12));
    }

    @Test
    void receptors_of_different_kinds_are_said_to_need_proof() {
        var row = aRow().at(SupportKind.TABLETOP)
                .withGrid("none")
                .withReceptor("dr1", "18x24")
                .row();
        var asked = new RoomTransfer(
                "r1", 1, Optional.empty(), List.of(), RoomTransfer.Scope.ALL, Map.of(), Map.of(), Map.of("dr1", "cr1"));
        var to = aTabletopRoom("r2", "110").room();
        var different = transferred(ROOM, to, asked, ChartContent.EMPTY, row);
        assertThat(String.join(" ", different.assumptions())).contains("Receptors of different kinds", "air kerma");
        assertThat(different.statement()).contains("Receptors of different kinds: to be proven on a phantom");
        assertThat(transferred(ROOM, to, row).statement()).doesNotContain("different kinds");
    }

    @Test
    void a_room_without_a_measured_output_is_said_to_be_uncalibrated() {
        var to = aRoom().withId("r2").uncalibrated().room();
        var proposal = transferred(ROOM, to, aRow().row());
        assertThat(proposal.statement()).contains("r2: output not measured, by the beam model, uncalibrated");
        assertThat(String.join(" ", proposal.assumptions())).contains("may be off by 30 %");
        assertThat(proposal.rows().get(0).factors().get(0).text()).contains("beam model, uncalibrated");
    }

    /** 3.1 mm Al at 80 kV is what some 3 mm Al give; the other room's paper says 2.5. */
    @Test
    void the_beams_are_named_as_their_half_value_layers_have_them_and_as_paper_has_them() {
        var beam = only(aRow(), other()).factors().stream()
                .filter(factor -> factor.name().equals("beam"))
                .findFirst()
                .orElseThrow();
        assertThat(beam.text())
                .containsPattern(
                        "over that of 2\\.[89][0-9]? mm Al fitted to the measured half-value layer \\(2\\.5 mm Al on paper\\)");
    }

    @Test
    void a_grid_is_met_by_the_nearest_ratio_in_focus_and_one_that_is_named_is_taken() {
        var proposed = only(aRow(), other());
        assertThat(proposed.row().setting().grid()).isEqualTo("g10");
        var without = new RoomTransfer(
                "r1",
                1,
                Optional.empty(),
                List.of(),
                RoomTransfer.Scope.ALL,
                Map.of(),
                Map.of("g10", "none"),
                Map.of());
        var bare = PlanningFixtures.only(transferred(ROOM, other(), without, ChartContent.EMPTY, aRow().row()));
        assertThat(bare.row().setting().grid()).isEqualTo("none");
        assertThat(factor(bare, "grid")).isLessThan(0.6);
        assertThat(bare.factors().get(2).text()).contains("no grid for grid g10 10:1", "the grids' own factors");
    }

    @Test
    void an_sid_that_the_support_does_not_allow_is_met_by_the_nearest() {
        var to = aTabletopRoom("r2", "100 180").room();
        var proposed = only(aRow().at(SupportKind.TABLETOP).withGrid("none"), to);
        assertThat(proposed.row().setting().sid().inCentimetres()).isEqualTo(100);
        assertThat(factor(proposed, "distance")).isCloseTo(100.0 * 100 / (110 * 110), within(1e-12));
    }

    @Test
    void what_the_other_room_cannot_do_is_left_out_with_the_reason() {
        var to = aTabletopRoom("r2", "110").withoutAec().room();
        var asked = toTheTabletop();
        var proposal = transferred(
                ROOM,
                to,
                asked,
                ChartContent.EMPTY,
                aRow().at(SupportKind.WALL_BUCKY).withGrid("g8").withSid("180").row(),
                aRow().withAec(0, "100", Chamber.CENTRE).row(),
                aRow().withBand(24, 30)
                        .withKV("79")
                        .withMAs("500")
                        .withLongestTime("100")
                        .row(),
                aRow().withBand(36, 40).row());
        assertThat(proposal.rows()).isEmpty();
        assertThat(proposal.leftOut())
                .extracting(LeftOut::reason)
                .satisfiesExactly(
                        reason -> assertThat(reason).contains("room r2 has no wall-bucky", "supports"),
                        reason -> assertThat(reason).contains("the generator of room r2 has no AEC"),
                        reason -> assertThat(reason).contains("the row's longest time 100 ms"),
                        reason -> assertThat(reason).contains("not predicted: the thickness is 38 cm"));
    }

    @Test
    void of_an_aec_row_the_back_up_is_scaled_and_the_density_is_normal() {
        var half = aRoom().withId("r2").withTube(tube("3.0", 0.5)).room();
        var row = aRow().withAec(2, "100", Chamber.CENTRE, Chamber.LEFT);
        var proposal = transferred(ROOM, half, row.row());
        var control = (ExposureControl.Automatic)
                PlanningFixtures.only(proposal).row().setting().control();
        assertThat(control.density()).isZero();
        assertThat(control.backup().inMilliampereSeconds()).isEqualTo(200);
        assertThat(control.chambers()).containsExactlyInAnyOrder(Chamber.LEFT, Chamber.CENTRE);
        assertThat(String.join(" ", proposal.assumptions())).contains("the calibration of room r2's own AEC");
        var tooMuch =
                transferred(ROOM, half, row.withAec(0, "320", Chamber.CENTRE).row());
        assertThat(tooMuch.leftOut().get(0).reason()).contains("lies outside the generator");
    }

    @Test
    void two_supports_brought_to_one_take_each_other_no_place() {
        var asked = toTheTabletop();
        var to = aTabletopRoom("r2", "110").room();
        var proposal = transferred(
                ROOM,
                to,
                asked,
                ChartContent.EMPTY,
                aRow().at(SupportKind.TABLETOP).withGrid("none").row(),
                aRow().row());
        assertThat(proposal.rows()).hasSize(1);
        assertThat(proposal.leftOut().get(0).reason()).contains("is taken by LSPINE/ap/adult/tabletop/18-24");
    }

    @Test
    void rows_of_the_room_in_their_way_are_withdrawn_and_others_stay() {
        var before = chart(aRow().withBand(16, 20), aRow().withBand(24, 30));
        var proposal = transferred(ROOM, other(), everything(ROOM), before, aRow().row());
        assertThat(proposal.withdrawn())
                .extracting(RowKey::toString)
                .containsExactly("LSPINE/ap/adult/table-bucky/16-20");
    }

    @Test
    void adjustments_are_taken_along_only_where_the_room_has_none() {
        var theirs = List.of(timesMAs("cast", "1.5"));
        var calculation = new TransferCalculation(MODELS, RULES, ROOM, other(), everything(ROOM), ChartContent.EMPTY);
        assertThat(calculation.proposal(List.of(aRow().row()), theirs, 1).adjustments())
                .isEqualTo(theirs);
        var own = new ChartContent(List.of(), List.of(timesMAs("plaster", "2")));
        var again = new TransferCalculation(MODELS, RULES, ROOM, other(), everything(ROOM), own);
        var proposal = again.proposal(List.of(aRow().row()), theirs, 1);
        assertThat(proposal.adjustments()).isEmpty();
        assertThat(String.join(" ", proposal.assumptions())).contains("stay those of room r2");
    }

    /** All rows of the first version, those of the table bucky on the tabletop and without a grid. */
    private static RoomTransfer toTheTabletop() {
        return new RoomTransfer(
                "r1",
                1,
                Optional.empty(),
                List.of(),
                RoomTransfer.Scope.ALL,
                Map.of(SupportKind.TABLE_BUCKY, SupportKind.TABLETOP),
                Map.of("g10", "none"),
                Map.of());
    }
}
