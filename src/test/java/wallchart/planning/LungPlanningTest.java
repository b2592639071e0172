package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.bands;
import static wallchart.planning.PlanningFixtures.drawn;
import static wallchart.planning.PlanningFixtures.only;
import static wallchart.planning.PlanningFixtures.plan;
import static wallchart.planning.PlanningFixtures.transferred;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.Room;
import wallchart.planning.BandPlan.Kind;

/** Chests and what else is mostly lung: no slab of water stands for them. */
class LungPlanningTest {

    private static RowBuilder aChest() {
        return aRow().of("CHEST", "ap").withBand(22, 25).withKV("85").withMAs("4");
    }

    private static Room uncalibrated() {
        return aRoom().withId("r2").uncalibrated().room();
    }

    private static String refusal(Planned planned) {
        var problem = ((Planned.Refused) planned).why().problems().get(0);
        return problem.field() + " " + problem.message();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void no_bands_are_planned_of_a_chest(Kind kind) {
        assertThat(refusal(plan(aChest(), bands(kind, "15", "32", "3"))))
                .startsWith("row is of CHEST/ap/adult/table-bucky, mostly lung: a slab of water does not stand for it")
                .contains("proven at its thickness", "leave the exposure to the AEC");
    }

    @ParameterizedTest
    @CsvSource({"CHEST, pa", "CHEST, lateral", "RIB, ap", "STERNUM, lateral", "CHESTABDOMEN, ap"})
    void nor_of_ribs_sternum_or_chest_and_abdomen(String bodyPart, String projection) {
        var asked = plan(aChest().of(bodyPart, projection), bands(Kind.FLAT_EXPOSURE, "15", "32", "3"));
        assertThat(refusal(asked)).contains("mostly lung");
    }

    @Test
    void a_chest_under_aec_is_refused_for_its_lungs_since_mas_would_not_help() {
        var asked = plan(aChest().withAec(0, "100", Chamber.LEFT), bands(Kind.FIXED_KV, "15", "32", "3"));
        assertThat(refusal(asked)).contains("mostly lung");
    }

    @ParameterizedTest
    @CsvSource({"TSPINE, ap", "ABDOMEN, ap", "SHOULDER, ap"})
    void spine_trunk_and_shoulder_are_planned(String bodyPart, String projection) {
        var proposal = drawn(plan(aChest().of(bodyPart, projection), bands(Kind.FIXED_KV, "18", "27", "3")));
        assertThat(proposal.rows()).hasSize(3).allMatch(row -> row.cautions().isEmpty());
    }

    @Test
    void a_chest_is_brought_to_another_room_at_its_own_tube_voltage_and_thickness_with_a_caution_beside_it() {
        var proposal = transferred(ROOM, uncalibrated(), aChest().row(), aRow().row());
        assertThat(proposal.rows()).hasSize(2);
        var chest = proposal.rows().get(0);
        assertThat(chest.row().setting().kV())
                .isEqualTo(aChest().row().setting().kV());
        assertThat(chest.row().referenceThickness()).isEqualTo(aChest().row().referenceThickness());
        assertThat(chest.cautions())
                .singleElement()
                .asString()
                .startsWith("mostly lung: a slab of water does not stand for it")
                .contains("only the room is exchanged", "behind half as much water");
        assertThat(proposal.rows().get(1).cautions()).isEmpty();
    }

    @Test
    void how_a_chest_behaves_towards_the_ends_of_its_band_is_not_predicted() {
        var chest = only(transferred(ROOM, uncalibrated(), aChest().row()));
        assertThat(chest.ends().lowerDb()).isEmpty();
        assertThat(chest.ends().upperDb()).isEmpty();
        var spine = only(transferred(ROOM, uncalibrated(), aRow().row()));
        assertThat(spine.ends().lowerDb()).isPresent();
    }

    @Test
    void the_caution_names_what_the_same_factors_make_behind_half_as_much_water() {
        var to = aRoom().withId("r2").uncalibrated().room();
        var whole = only(transferred(ROOM, to, aChest().row()));
        var half = only(transferred(
                ROOM,
                to,
                aChest().of("LSPINE", "ap")
                        .withBand(10, 14)
                        .withReferenceThickness("11.75")
                        .row()));
        assertThat(half.row().referenceThickness().inCentimetres())
                .isCloseTo(whole.row().referenceThickness().inCentimetres() / 2, within(1e-9));
        assertThat(whole.cautions().get(0))
                .contains("all factors together are " + Figures.number(Factor.product(whole.factors())))
                .contains("half as much water " + Figures.number(Factor.product(half.factors())));
    }

    @Test
    void a_chest_that_follows_water_inside_its_band_is_said_to_need_another_method() {
        var proposal = transferred(
                ROOM, uncalibrated(), aChest().withMethod("attenuation").row());
        assertThat(only(proposal).cautions()).hasSize(2);
        assertThat(only(proposal).cautions().get(1)).contains("its method, attenuation", "choose another");
    }

    @Test
    void who_signs_reads_which_examinations_were_exchanged_as_water() {
        var proposal = transferred(ROOM, uncalibrated(), aChest().row(), aRow().row());
        assertThat(proposal.statement())
                .contains("Mostly lung, exchanged as water: CHEST/ap/adult/table-bucky. ")
                .doesNotContain("LSPINE");
        assertThat(String.join(" ", proposal.assumptions()))
                .contains("Of CHEST/ap/adult/table-bucky, mostly lung", "0.26 cm of water");
        assertThat(transferred(ROOM, uncalibrated(), aRow().row()).statement()).doesNotContain("Mostly lung");
    }
}
