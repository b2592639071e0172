package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.aTabletopRoom;
import static wallchart.planning.PlanningFixtures.bands;
import static wallchart.planning.PlanningFixtures.drawn;
import static wallchart.planning.PlanningFixtures.plan;
import static wallchart.planning.PlanningFixtures.transferred;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartContent;
import wallchart.equipment.Chamber;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.SupportKind;
import wallchart.planning.BandPlan.Kind;

/** What is said beside single rows of a draft. */
class RowCautionsTest {

    private static ProposedRow planned(Kind kind, String from, String to) {
        return drawn(plan(aRow().withMAs("4"), bands(kind, from, to, "60")))
                .rows()
                .get(0);
    }

    @Test
    void a_band_over_8_cm_from_the_proof_is_said_to_be_far_and_one_at_8_cm_is_not() {
        assertThat(planned(Kind.FIXED_KV, "28", "30").cautions()).isEmpty(); // 29 cm, proven at 21
        assertThat(planned(Kind.FIXED_KV, "29", "31").cautions())
                .singleElement()
                .asString()
                .contains("30 cm lies far from the 21 cm at which the technique is proven");
    }

    @Test
    void a_band_of_half_the_thickness_is_far_though_less_than_8_cm_away() {
        var thin = aRow().withReferenceThickness("21").withMAs("25");
        var row =
                drawn(plan(thin, bands(Kind.FIXED_KV, "13", "14", "60"))).rows().get(0);
        assertThat(row.cautions()).singleElement().asString().contains("13.5 cm lies far from the 21 cm");
    }

    @Test
    void a_tube_voltage_over_15_percent_from_the_proof_is_said() {
        assertThat(planned(Kind.VARIABLE_KV, "25", "27").cautions()).isEmpty(); // 85 kV is 13 % over 75
        assertThat(planned(Kind.VARIABLE_KV, "26", "28").cautions())
                .singleElement()
                .asString()
                .contains("87 kV lies more than 15 % from the 75 kV that is proven");
    }

    @Test
    void nothing_is_planned_that_asks_for_over_32_times_the_proven_mas() {
        var proven = aRow().withBand(4, 6).withReferenceThickness("5").withMAs("0.5");
        var proposal = drawn(plan(proven, bands(Kind.FIXED_KV, "26", "32", "6")));
        assertThat(proposal.rows()).isEmpty();
        assertThat(proposal.leftOut().get(0).reason())
                .contains("times the proven one at 5 cm, beyond 32 times either way");
    }

    @Test
    void the_exposure_time_stands_beside_each_row_and_a_long_one_is_said() {
        var small = aRow().with(FocalSpotName.SMALL).withMAs("80");
        var rows = drawn(plan(small, bands(Kind.FIXED_KV, "18", "28", "2"))).rows();
        assertThat(rows).allSatisfy(row -> {
            boolean isLong = row.time().orElseThrow().milliseconds().doubleValue() > 1000;
            assertThat(row.cautions().stream().anyMatch(caution -> caution.contains("patients move")))
                    .isEqualTo(isLong);
        });
        assertThat(rows).anyMatch(row -> row.time().orElseThrow().milliseconds().doubleValue() > 1000);
        assertThat(rows).anyMatch(row -> row.time().orElseThrow().milliseconds().doubleValue() < 1000);
        var automatic = transferred(
                ROOM,
                aRoom().withId("r2").room(),
                aRow().withAec(0, "100", Chamber.CENTRE).row());
        assertThat(automatic.rows().get(0).time()).isEmpty();
    }

    @Test
    void a_receptor_of_another_kind_is_said_beside_the_row_and_in_its_factor() {
        var row = aRow().at(SupportKind.TABLETOP)
                .withGrid("none")
                .withReceptor("dr1", "18x24")
                .row();
        var asked = new RoomTransfer(
                "r1", 1, Optional.empty(), List.of(), RoomTransfer.Scope.ALL, Map.of(), Map.of(), Map.of("dr1", "cr1"));
        var proposed = PlanningFixtures.only(
                transferred(ROOM, aTabletopRoom("r2", "110").room(), asked, ChartContent.EMPTY, row));
        assertThat(proposed.cautions())
                .anySatisfy(caution -> assertThat(caution).contains("receptors are of different kinds"));
        assertThat(proposed.factors())
                .filteredOn(factor -> factor.name().equals("target"))
                .extracting(Factor::text)
                .containsExactly(
                        "target exposure index from 400 to 250, receptors of different kinds: prove it on a phantom");
    }

    @Test
    void a_grid_whose_own_factors_say_over_a_tenth_else_than_the_model_is_said() {
        var without = new RoomTransfer(
                "r1",
                1,
                Optional.empty(),
                List.of(),
                RoomTransfer.Scope.ALL,
                Map.of(),
                Map.of("g10", "none"),
                Map.of());
        var to = aRoom().withId("r2").room();
        var bare = PlanningFixtures.only(transferred(ROOM, to, without, ChartContent.EMPTY, aRow().row()));
        double own = 1 / ROOM.findGrid("g10").orElseThrow().factorAt(75);
        double modelled = bare.factors().get(2).value();
        assertThat(Math.abs(own / modelled - 1)).isGreaterThan(0.10);
        assertThat(bare.cautions()).anySatisfy(caution -> assertThat(caution)
                .contains("x " + Figures.number(modelled) + " by the model")
                .contains("x " + Figures.number(own) + " by the grids' own factors"));
        var same = PlanningFixtures.only(transferred(ROOM, to, aRow().row()));
        assertThat(same.cautions()).isEmpty();
    }
}
