package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.answer;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.refused;

import org.junit.jupiter.api.Test;
import wallchart.chart.Band;
import wallchart.chart.ChartBuilder;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.technique.Refusal.Kind;

/** Every question that has no answer is refused with the value, the limit and the next step. */
class RefusalsTest {

    private static final Room ROOM = EquipmentFixtures.aRoom().room();

    private static ChartBuilder chart() {
        return aChart().withBand(18, 24)
                .withBand(24, 30)
                .with(aRow().withBand(33, 36))
                .with(aRow().of("LSPINE", "lateral").withBand(27, 32))
                .with(aRow().of("CHEST", "pa")
                        .at(SupportKind.WALL_BUCKY)
                        .withGrid("g8")
                        .withSid("180"))
                .with(aRow().of("KNEE", "ap").withBand(10, 13))
                .with(aRow().of("KNEE", "ap")
                        .at(SupportKind.TABLETOP)
                        .withGrid("none")
                        .withBand(10, 13))
                .with(aRow().forGroup("child-5-9").withBand(10, 14))
                .with(addingKV("large-cast", "8"));
    }

    @Test
    void an_unknown_body_part_names_those_there_are() {
        var refusal = refused(ROOM, chart(), aQuery().of("LUMBAR", "ap"));
        assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_BODY_PART);
        assertThat(refusal.detail()).contains("LUMBAR", "room r1", "DICOM Body Part Examined");
        assertThat(refusal.choices()).containsExactly("CHEST", "KNEE", "LSPINE");
    }

    @Test
    void an_unknown_projection_names_those_there_are() {
        var refusal = refused(ROOM, chart(), aQuery().of("LSPINE", "oblique"));
        assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_PROJECTION);
        assertThat(refusal.detail()).contains("LSPINE", "oblique", "propose a change");
        assertThat(refusal.choices()).containsExactly("ap", "lateral");
    }

    @Test
    void an_unknown_patient_group_names_those_there_are_and_warns() {
        var refusal = refused(ROOM, chart(), aQuery().forGroup("neonate"));
        assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_PATIENT_GROUP);
        assertThat(refusal.detail()).contains("neonate", "never use another group's row without judgement");
        assertThat(refusal.choices()).containsExactly("adult", "child-5-9");
    }

    @Test
    void an_examination_at_two_supports_asks_which() {
        var refusal = refused(ROOM, chart(), aQuery().of("KNEE", "ap").ofThickness("12"));
        assertThat(refusal.kind()).isEqualTo(Kind.SUPPORT_REQUIRED);
        assertThat(refusal.detail()).contains("KNEE ap", "tabletop and table-bucky", "say which");
        assertThat(refusal.choices()).containsExactly("tabletop", "table-bucky");
    }

    @Test
    void an_examination_at_one_support_needs_none_named() {
        assertThat(found(ROOM, chart(), aQuery()).situation().support().kind()).isEqualTo(SupportKind.TABLE_BUCKY);
    }

    @Test
    void a_support_where_the_examination_is_not_charted_is_refused() {
        var refusal = refused(ROOM, chart(), aQuery().at(SupportKind.WALL_BUCKY));
        assertThat(refusal.kind()).isEqualTo(Kind.SUPPORT_REQUIRED);
        assertThat(refusal.detail()).contains("not charted at \"wall-bucky\"", "choose table-bucky");
    }

    @Test
    void a_thickness_under_the_chart_names_the_band_above() {
        var refusal = refused(ROOM, chart(), aQuery().ofThickness("17.99"));
        assertThat(refusal.kind()).isEqualTo(Kind.THICKNESS_OUTSIDE_CHART);
        assertThat(refusal.nearestBands()).containsExactly(Band.centimetres("18", "24"));
        assertThat(refusal.detail())
                .contains(
                        "for adult at table-bucky",
                        "17.99 cm",
                        "18-24 cm",
                        "Check the measurement",
                        "propose a change");
    }

    @Test
    void a_thickness_in_a_gap_names_the_bands_on_either_side() {
        var refusal = refused(ROOM, chart(), aQuery().ofThickness("31"));
        assertThat(refusal.nearestBands()).containsExactly(Band.centimetres("24", "30"), Band.centimetres("33", "36"));
        assertThat(refusal.detail()).contains("24-30 cm and 33-36 cm");
    }

    @Test
    void a_thickness_over_the_chart_names_the_band_below() {
        var refusal = refused(ROOM, chart(), aQuery().ofThickness("40"));
        assertThat(refusal.nearestBands()).containsExactly(Band.centimetres("33", "36"));
    }

    @Test
    void a_thickness_that_another_support_is_charted_for_names_it() {
        var chart = aChart().with(aRow().withBand(18, 24))
                .with(aRow().at(SupportKind.TABLETOP).withGrid("none").withBand(10, 18));
        var refusal = refused(ROOM, chart, aQuery().at(SupportKind.TABLETOP).ofThickness("20"));
        assertThat(refusal.detail()).contains("charted for this thickness at table-bucky");
        assertThat(refusal.choices()).containsExactly("table-bucky");
        assertThat(refused(ROOM, chart, aQuery().at(SupportKind.TABLETOP).ofThickness("30"))
                        .detail())
                .doesNotContain("charted for this thickness");
    }

    @Test
    void a_band_holds_its_lower_end_and_not_its_upper() {
        assertThat(bandAt("18")).isEqualTo(Band.centimetres("18", "24"));
        assertThat(bandAt("23.99")).isEqualTo(Band.centimetres("18", "24"));
        assertThat(bandAt("24")).isEqualTo(Band.centimetres("24", "30"));
        assertThat(refused(ROOM, chart(), aQuery().ofThickness("30")).kind()).isEqualTo(Kind.THICKNESS_OUTSIDE_CHART);
        assertThat(refused(ROOM, chart(), aQuery().ofThickness("36")).kind()).isEqualTo(Kind.THICKNESS_OUTSIDE_CHART);
    }

    private static Band bandAt(String thickness) {
        return found(ROOM, chart(), aQuery().ofThickness(thickness))
                .situation()
                .row()
                .key()
                .band();
    }

    @Test
    void a_grid_that_the_support_does_not_take_is_refused() {
        for (var grid : new String[] {"g8", "g99"}) {
            var refusal = refused(ROOM, chart(), aQuery().withGrid(grid));
            assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_GRID);
            assertThat(refusal.detail()).contains(grid, "table-bucky", "choose g10 or none");
            assertThat(refusal.choices()).containsExactly("g10", "none");
        }
        var wall = aQuery().of("CHEST", "pa").withGrid("none");
        assertThat(refused(ROOM, chart(), wall).kind()).isEqualTo(Kind.UNKNOWN_GRID);
    }

    @Test
    void an_unknown_adjustment_names_those_there_are() {
        var refusal = refused(ROOM, chart(), aQuery().with("large-cast", "wet-cast"));
        assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_ADJUSTMENT);
        assertThat(refusal.detail()).contains("wet-cast", "version 1", "room r1", "choose one it has");
        assertThat(refusal.choices()).containsExactly("large-cast");
    }

    @Test
    void an_adjustment_cannot_be_asked_for_twice() {
        assertThatThrownBy(() -> aQuery().with("large-cast", "large-cast").query())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"large-cast\" is asked more than once");
    }

    @Test
    void a_chart_of_another_room_is_a_fault_and_not_an_answer() {
        var other = EquipmentFixtures.aRoom().withId("r2").room();
        assertThatThrownBy(() -> answer(other, chart(), aQuery()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("chart of room r1 asked for room r2");
    }

    @Test
    void either_hands_out_the_case_that_holds() {
        String yes = answer(ROOM, chart(), aQuery()).either(found -> "found", refused -> "refused");
        String no = answer(ROOM, chart(), aQuery().ofThickness("1")).either(found -> "found", refused -> "refused");
        assertThat(yes).isEqualTo("found");
        assertThat(no).isEqualTo("refused");
    }
}
