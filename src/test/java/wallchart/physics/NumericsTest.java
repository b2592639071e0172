package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wallchart.Validation;

class NumericsTest {

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.29: n points are exact up to degree 2n - 1. */
    @Validation
    @Test
    void quadrature_is_exact_up_to_degree_63_and_not_beyond() {
        assertThat(GaussLegendre.integrate(0, 1, x -> Math.pow(x, 63))).isCloseTo(1 / 64.0, within(1e-15));
        assertThat(GaussLegendre.integrate(-2, 3, x -> x * x)).isCloseTo(35 / 3.0, within(1e-12));
        assertThat(GaussLegendre.integrate(-1, 1, x -> Math.pow(x, 80))).isNotCloseTo(2 / 81.0, within(1e-15));
    }

    @Test
    void an_axis_is_linear_inside_and_held_outside() {
        var axis = new Axis(1, 2, 4);
        var values = new double[] {10, 20, 60};
        assertThat(axis.interpolate(1.5, values)).isEqualTo(15);
        assertThat(axis.interpolate(2, values)).isEqualTo(20);
        assertThat(axis.interpolate(3, values)).isEqualTo(40);
        assertThat(axis.interpolate(0, values)).isEqualTo(10);
        assertThat(axis.interpolate(9, values)).isEqualTo(60);
    }

    @Test
    void a_missing_table_or_column_is_named() {
        assertThatThrownBy(() -> ResourceTable.read("absent.csv")).hasMessageContaining("absent.csv is missing");
        assertThatThrownBy(() -> ResourceTable.read("csi_response.csv").numbers("absent"))
                .hasMessageContaining("csi_response.csv has no column absent");
    }

    @Test
    void a_table_with_a_missing_energy_is_refused() {
        assertThatThrownBy(() -> ResourceTable.read("energies_with_a_gap.csv").perEnergy("value"))
                .hasMessageContaining("lacks the row for 10 keV");
    }

    @Test
    void a_scatter_table_with_a_missing_point_is_refused() {
        assertThatThrownBy(() -> new ScatterTable(ResourceTable.read("scatter_with_a_gap.csv")))
                .hasMessageContaining("lacks points");
    }
}
