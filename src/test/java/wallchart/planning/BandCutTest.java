package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.planning.PlanningFixtures.MODELS;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.bands;
import static wallchart.planning.PlanningFixtures.drawn;
import static wallchart.planning.PlanningFixtures.plan;
import static wallchart.planning.PlanningFixtures.transferred;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.chart.Band;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.equipment.Chamber;
import wallchart.equipment.Room;
import wallchart.planning.BandPlan.Kind;
import wallchart.quantity.PartThickness;
import wallchart.technique.ConsoleReach;

/** Bands as far as the console can expose them. */
class BandCutTest {

    private static ConsoleReach reach(Room room, Row row, PartThickness thickness) {
        return MODELS.predictions().findReach(room, row, thickness).orElseThrow();
    }

    private static void assertBothEndsCanBeSet(Room room, ChartProposal proposal) {
        for (var proposed : proposal.rows()) {
            var band = proposed.row().key().band();
            for (var end : List.of(band.from(), band.to())) {
                assertThat(reach(room, proposed.row(), end).reasons())
                        .as(band + " at " + end)
                        .isEmpty();
            }
        }
    }

    private static List<Band> places(ChartProposal proposal) {
        var places = new ArrayList<Band>();
        proposal.rows().forEach(row -> places.add(row.row().key().band()));
        proposal.leftOut().forEach(left -> places.add(left.place().orElseThrow().band()));
        places.sort(Comparator.comparing(Band::from));
        return places;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatever_is_planned_can_be_set_at_both_ends_of_its_band_and_the_rest_is_named(Kind kind) {
        for (var width : List.of("1", "3", "5")) {
            var proposal = drawn(plan(aRow().withMAs("80"), bands(kind, "15", "35", width)));
            assertBothEndsCanBeSet(ROOM, proposal);
            var places = places(proposal);
            assertThat(places.get(0).from()).isEqualTo(PartThickness.centimetres(15));
            assertThat(places.get(places.size() - 1).to()).isEqualTo(PartThickness.centimetres(35));
            for (int i = 1; i < places.size(); i++) {
                assertThat(places.get(i).from()).isEqualTo(places.get(i - 1).to());
            }
        }
    }

    @Test
    void a_band_of_attenuation_ends_where_the_generator_ends() {
        var proposal = drawn(plan(aRow().withMAs("80"), bands(Kind.FLAT_EXPOSURE, "21", "35", "7")));
        var cut = proposal.leftOut().get(0);
        var band = proposal.rows().get(proposal.rows().size() - 1).row().key().band();
        assertThat(cut.place().orElseThrow().band().from()).isEqualTo(band.to());
        assertThat(cut.reason()).contains(" mAs at 31.5 cm lies outside the generator of room r1");
        var beyond = new PartThickness(band.to().centimetres().add(new BigDecimal("0.5")));
        var longer = new Band(band.from(), beyond);
        var planned = drawn(
                plan(aRow().withMAs("80"), bands(Kind.FLAT_EXPOSURE, text(longer.from()), text(longer.to()), "60")));
        assertThat(planned.leftOut()).as("half a centimetre more").isNotEmpty();
    }

    private static String text(PartThickness thickness) {
        return thickness.centimetres().toPlainString();
    }

    @Test
    void a_row_that_is_brought_keeps_its_reference_thickness_and_loses_the_end_that_the_room_cannot_expose() {
        var row = aRow().withBand(18, 35)
                .withReferenceThickness("21")
                .withMAs("80")
                .withMethod("attenuation")
                .row();
        var to = aRoom().withId("r2").room();
        var proposal = transferred(ROOM, to, row);
        assertThat(proposal.rows()).hasSize(1);
        assertThat(proposal.rows().get(0).row().referenceThickness()).isEqualTo(PartThickness.centimetres(21));
        assertBothEndsCanBeSet(to, proposal);
        assertThat(proposal.leftOut()).singleElement().satisfies(left -> {
            assertThat(left.row()).isEqualTo("LSPINE/ap/adult/table-bucky/18-35");
            assertThat(left.reason()).startsWith("of its band ").contains("-35 cm stays behind: at 35 cm");
            assertThat(left.place().map(RowKey::band).orElseThrow().to()).isEqualTo(PartThickness.centimetres(35));
        });
    }

    @Test
    void where_the_room_has_no_aec_that_is_the_reason_and_not_the_back_up() {
        var to = aRoom().withId("r2").uncalibrated().withoutAec().room();
        var row = aRow().withAec(0, "500", Chamber.CENTRE).row();
        assertThat(transferred(ROOM, to, row).leftOut().get(0).reason())
                .contains("the generator of room r2 has no AEC")
                .doesNotContain("back-up", "outside the generator");
    }

    @Test
    void a_voltage_beyond_the_window_of_the_row_says_where_the_window_ends() {
        var proposal = drawn(plan(aRow().withKVWindow("70", "80"), bands(Kind.VARIABLE_KV, "20", "26", "2")));
        assertThat(proposal.leftOut()).extracting(LeftOut::reason).anySatisfy(reason -> assertThat(reason)
                .contains("over the row's kV window, which ends at 80 kV: widen it"));
    }

    @ParameterizedTest
    @CsvSource({"15, 24.5, 3, 3", "15, 25.4, 3, 3", "15, 25.5, 3, 4", "15, 26, 3, 4", "15, 16, 3, 1"})
    void a_last_band_under_half_the_width_is_one_with_the_band_before(
            String from, String to, String width, int expected) {
        var planned = bands(Kind.FIXED_KV, from, to, width).bands();
        assertThat(planned).hasSize(expected);
        assertThat(planned.get(expected - 1).to()).isEqualTo(PartThickness.centimetres(to));
    }

    @Test
    void the_change_says_which_thicknesses_of_what_comes_have_no_answer_and_counts_the_rest() {
        var to = aRoom().withId("r2").withoutAec().room();
        var row = aRow().withBand(18, 35)
                .withReferenceThickness("21")
                .withMAs("80")
                .withMethod("attenuation");
        var proposal = transferred(
                ROOM,
                to,
                row.row(),
                aRow().of("TSPINE", "ap").withAec(0, "100", Chamber.CENTRE).row());
        var kept = proposal.rows().get(0).row().key().band().to();
        var open = text(kept).replaceAll("\\.?0+$", "") + "-35";
        assertThat(proposal.statement())
                .contains("Left out: LSPINE/ap/adult/table-bucky/" + open + ". ")
                .contains("Also left out: 1 row of examinations of which nothing comes. ")
                .contains("No answer then for LSPINE/ap/adult/table-bucky " + open + " cm. ")
                .endsWith("an estimate.");
    }
}
