package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.step;

import org.junit.jupiter.api.Test;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;

/** Rules 2 to 5, each in words and numbers. */
class EffectsTest {

    private static final Room ROOM = EquipmentFixtures.aRoom().room();

    @Test
    void at_the_reference_thickness_nothing_changes() {
        var step = step(found(ROOM, aRow(), aQuery().ofThickness("21")), "thickness");
        assertThat(step.text()).isEqualTo("at the reference thickness, 21 cm");
        assertThat(step.kV()).isEqualTo(75);
    }

    @Test
    void a_thinner_part_takes_kilovolts_off() {
        var step = step(found(ROOM, aRow().withMethod("kv-per-cm", "3"), aQuery().ofThickness("19.5")), "thickness");
        assertThat(step.text()).isEqualTo("3 kV per cm x -1.5 cm");
        assertThat(step.kV()).isEqualTo(70.5);
    }

    @Test
    void the_reference_is_the_middle_of_the_band_unless_the_row_says_otherwise() {
        var row = aRow().withReferenceThickness("24");
        assertThat(step(found(ROOM, row, aQuery().ofThickness("21")), "thickness")
                        .kV())
                .isEqualTo(69);
    }

    @Test
    void the_mas_method_says_its_factor() {
        var step = step(found(ROOM, aRow().withMethod("mas-per-cm"), aQuery().ofThickness("23.5")), "thickness");
        assertThat(step.text()).isEqualTo("mAs doubles per 5 cm: +2.5 cm is x 1.414");
        assertThat(step.mAs()).isCloseTo(25 * Math.sqrt(2), within(1e-12));
        assertThat(step.kV()).isEqualTo(75);
    }

    @Test
    void a_fixed_row_says_that_the_thickness_changes_nothing() {
        var step = step(found(ROOM, aRow().withMethod("fixed"), aQuery().ofThickness("18")), "thickness");
        assertThat(step.text()).isEqualTo("fixed over the band: -3 cm changes nothing");
        assertThat(step.mAs()).isEqualTo(25);
    }

    @Test
    void the_attenuation_method_follows_the_modelled_receptor_signal() {
        var row = aRow().withMethod("attenuation");
        var thick = step(found(ROOM, row, aQuery().ofThickness("23")), "thickness");
        assertThat(thick.text())
                .matches("modelled attenuation of \\+2 cm of water is x 1\\.\\d+, by the signal in caesium iodide");
        var thin = step(found(ROOM, row, aQuery().ofThickness("19")), "thickness");
        assertThat(thick.mAs()).isBetween(25 * 1.2, 25 * 2.0);
        assertThat(thin.mAs()).isBetween(25 / 2.0, 25 / 1.2);
    }

    @Test
    void each_adjustment_is_a_step_in_the_order_asked() {
        var chart = aChart().with(aRow())
                .with(addingKV("cast", "6"))
                .with(timesMAs("wet", "1.5"))
                .with(addingKV("thin", "-4.5"));
        var technique = found(ROOM, chart, aQuery().with("wet", "thin", "cast"));
        assertThat(technique.steps())
                .filteredOn(step -> step.rule().equals("adjustment"))
                .extracting(Step::text)
                .containsExactly("Times 1.5: mAs x 1.5", "Adds -4.5 kV: -4.5 kV", "Adds 6 kV: +6 kV");
        assertThat(technique.exact()).isEqualTo(new Working(76.5, 37.5));
    }

    @Test
    void the_grid_factor_is_read_at_the_kv_reached_by_thickness_and_adjustments() {
        // 75 + 2 x 2 + 6 = 85 kV: factor 3.2 + 15/20 x 0.5 = 3.575
        var chart = aChart().with(aRow()).with(addingKV("cast", "6"));
        var step =
                step(found(ROOM, chart, aQuery().ofThickness("23").with("cast").withGrid("none")), "grid");
        assertThat(step.text()).isEqualTo("grid none instead of g10 at 85 kV: factor 1 / 3.575");
        assertThat(step.mAs()).isCloseTo(25 / 3.575, within(1e-12));
    }

    @Test
    void asking_for_the_rows_own_grid_and_distance_changes_nothing() {
        var technique = found(ROOM, aRow(), aQuery().withGrid("g10").atSid("110.0"));
        assertThat(step(technique, "grid").text()).isEqualTo("grid g10 as in the row");
        assertThat(step(technique, "distance").text()).isEqualTo("SID 110 cm as in the row");
        assertThat(technique.exact()).isEqualTo(new Working(75, 25));
    }
}
