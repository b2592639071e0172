package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.Validation;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

class MinimumHalfValueLayersTest {

    private static final MinimumHalfValueLayers MINIMA = MinimumHalfValueLayers.shipped();

    /**
     * Minimum half-value layers, mm Al: 25 Pa. Code 221.25, 32 Ill. Adm. Code 360 and Ariz. Admin. Code R9-7-605, which carry 21 CFR
     * 1020.30(m); the newer column above 80 kV from memory. 95 kV is Illinois' own published interpolation, older column.
     */
    @Validation
    @ParameterizedTest
    @CsvSource({"60, 1.3, 1.5", "70, 1.5, 1.8", "71, 2.1, 2.5", "80, 2.3, 2.9", "100, 2.7, 3.6", "150, 4.1, 5.4"})
    void the_minima_are_those_published(double kV, double older, double newer) {
        assertThat(MINIMA.older(kV)).isEqualTo(older);
        assertThat(MINIMA.newer(kV)).isEqualTo(newer);
    }

    @Validation
    @Test
    void between_the_table_the_older_minimum_is_the_one_a_regulator_published() {
        assertThat(MINIMA.older(95)).isCloseTo(2.6, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {70.1, 70.5, 70.9})
    void above_70_kv_the_higher_minimum_holds_at_once(double kV) {
        assertThat(MINIMA.older(kV)).isEqualTo(2.1);
        assertThat(MINIMA.newer(kV)).isEqualTo(2.5);
    }

    @ParameterizedTest
    @CsvSource({"50, 0.1", "151, 0.1", "80, 2.9", "70, 1.8", "80, 3.4"})
    void outside_the_table_and_at_the_minimum_nothing_is_said(long kV, double halfValueLayer) {
        assertThat(MINIMA.findRemark(halfValueLayer, TubeVoltage.kilovolts(kV))).isEmpty();
    }

    @Test
    void under_the_older_minimum_it_says_so_and_names_both() {
        assertThat(MINIMA.findRemark(2.2, TubeVoltage.kilovolts(80))).isEmpty();
        assertThat(MINIMA.findQuestion(halfValueLayer(2.2)).map(TubeQuestion::sentence))
                .hasValue(
                        "the half-value layer of 2.2 mm Al at 80 kV is under the minimum of 21 CFR 1020.30(m), 2.3 mm Al for"
                                + " systems made before 10 June 2006, 2.9 mm Al for systems made since then: measure again,"
                                + " have the filtration looked at, or confirm");
    }

    private static TubeMeasurement halfValueLayer(double millimetres) {
        return new TubeMeasurement(12, Filtration.aluminium("3"), millimetres, TubeVoltage.kilovolts(80), List.of());
    }

    @Test
    void between_both_minima_it_says_which_one_is_met() {
        assertThat(MINIMA.findQuestion(halfValueLayer(2.3))).isEmpty();
        assertThat(MINIMA.findRemark(2.3, TubeVoltage.kilovolts(80)))
                .hasValue(
                        "the half-value layer of 2.3 mm Al at 80 kV meets the minimum of 21 CFR 1020.30(m) of 2.3 mm Al for"
                                + " systems made before 10 June 2006, but not that of 2.9 mm Al for systems made since then");
    }
}
