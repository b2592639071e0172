package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.THIRTY_BY_THIRTY;
import static wallchart.physics.PhysicsFixtures.THREE_MILLIMETRES;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

class BeamPhysicsTest {

    @ParameterizedTest
    @CsvSource({
        "39, 12, 3, 0, the tube voltage is 39 kV: the beam model holds from 40 to 150 kV; use measured values instead",
        "150.1, 12, 3, 0, the tube voltage is 150.1 kV: the beam model holds from 40 to 150 kV",
        "80, 4.9, 3, 0, the anode angle is 4.9 degrees: the beam model holds from 5 to 25 degrees",
        "80, 12, 1.4, 0, the total filtration is 1.4 mm Al: the beam model holds from 1.5 to 60 mm Al",
        "80, 12, 3, 3.5, the copper filter is 3.5 mm Cu: the beam model holds from 0 to 3 mm Cu",
    })
    void a_beam_outside_the_model_is_refused_with_value_and_limits(
            String kilovolts, double anode, BigDecimal aluminium, BigDecimal copper, String message) {
        var total = new Filtration(aluminium, copper);
        var tubeVoltage = TubeVoltage.kilovolts(kilovolts);
        assertThat(PHYSICS.findObjection(tubeVoltage, anode, total).orElseThrow())
                .startsWith(message);
        assertThatThrownBy(() -> PHYSICS.beam(tubeVoltage, anode, total))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void a_receptor_signal_for_a_tube_outside_the_model_is_refused() {
        assertThatThrownBy(() -> PHYSICS.receptorSignal(
                        12, Filtration.NONE, GridModel.NONE, THIRTY_BY_THIRTY, ReceptorResponse.AIR_KERMA))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the total filtration is 0 mm Al");
    }

    @ParameterizedTest
    @CsvSource({"40, 5, 1.5, 0", "150, 25, 60, 3", "80, 12, 3, 0.1"})
    void at_its_limits_the_model_has_no_objection(
            String kilovolts, double anode, BigDecimal aluminium, BigDecimal copper) {
        var total = new Filtration(aluminium, copper);
        assertThat(PHYSICS.findObjection(TubeVoltage.kilovolts(kilovolts), anode, total))
                .isEmpty();
        assertThat(PHYSICS.beam(TubeVoltage.kilovolts(kilovolts), anode, total).halfValueLayerMillimetresAluminium())
                .isPositive()
                .isFinite();
    }

    @Test
    void the_same_beam_is_computed_once() {
        var eighty = TubeVoltage.kilovolts(80);
        assertThat(PHYSICS.beam(eighty, 12, THREE_MILLIMETRES))
                .isSameAs(PHYSICS.beam(TubeVoltage.kilovolts("80.0"), 12, THREE_MILLIMETRES));
    }

    @ParameterizedTest
    @CsvSource({"1, R6", "5, R6", "6, R6", "7, R6", "8, R8", "9, R8", "10, R10", "11, R10", "12, R12", "16, R12"})
    void a_grid_is_stood_in_for_by_the_nearest_ratio_the_lower_of_two(int ratio, GridModel grid) {
        assertThat(GridModel.nearest(ratio)).isEqualTo(grid);
    }

    @Test
    void no_ratio_is_no_grid_and_says_so() {
        assertThatThrownBy(() -> GridModel.nearest(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("grid ratio is 0: it must be 1 or more; without a grid, ask for NONE");
    }
}
