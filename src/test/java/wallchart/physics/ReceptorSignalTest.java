package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.physics.GridModel.R10;
import static wallchart.physics.PhysicsFixtures.THIRTY_BY_THIRTY;
import static wallchart.physics.PhysicsFixtures.THREE_MILLIMETRES;
import static wallchart.physics.PhysicsFixtures.aSignal;
import static wallchart.physics.PhysicsFixtures.directSum;
import static wallchart.physics.PhysicsFixtures.relativeError;
import static wallchart.physics.ReceptorResponse.CESIUM_IODIDE;

import java.util.Collections;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Regression;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

class ReceptorSignalTest {

    private static final double TABLE_TOLERANCE = 0.001;

    @Property
    void a_look_up_agrees_with_the_direct_sum_within_a_thousandth(
            @ForAll @DoubleRange(min = 40, max = 150) double kilovolts,
            @ForAll @DoubleRange(min = 0, max = 36) double centimetres,
            @ForAll GridModel grid,
            @ForAll ReceptorResponse response) {
        double lookedUp = aSignal(grid, response).perMAs(kilovolts, centimetres);
        assertThat(relativeError(lookedUp, directSum(grid, response, kilovolts, centimetres)))
                .isLessThan(TABLE_TOLERANCE);
    }

    @Test
    void the_table_holds_across_the_k_edge_and_from_skin_to_36_cm() {
        for (double kilovolts : new double[] {40.125, 40.5, 65.5, 69.2, 69.5, 69.6, 69.9, 70.5, 149.5}) {
            for (double centimetres = 0; centimetres <= 36; centimetres += 0.0625) {
                double lookedUp = aSignal(R10, CESIUM_IODIDE).perMAs(kilovolts, centimetres);
                assertThat(relativeError(lookedUp, directSum(R10, CESIUM_IODIDE, kilovolts, centimetres)))
                        .as("%s kV, %s cm", kilovolts, centimetres)
                        .isLessThan(TABLE_TOLERANCE);
            }
        }
    }

    /** The tolerance can tell: half way between whole kV, or whole cm, it is exceeded where the signal bends. */
    @Test
    void nodes_at_whole_kilovolts_and_centimetres_only_would_be_noticed() {
        double wholeKilovolts =
                Math.sqrt(directSum(R10, CESIUM_IODIDE, 40, 36) * directSum(R10, CESIUM_IODIDE, 41, 36));
        assertThat(relativeError(wholeKilovolts, directSum(R10, CESIUM_IODIDE, 40.5, 36)))
                .isGreaterThan(TABLE_TOLERANCE);
        double wholeCentimetres =
                Math.sqrt(directSum(R10, CESIUM_IODIDE, 40, 0) * directSum(R10, CESIUM_IODIDE, 40, 1));
        assertThat(relativeError(wholeCentimetres, directSum(R10, CESIUM_IODIDE, 40, 0.5)))
                .isGreaterThan(TABLE_TOLERANCE);
    }

    /** Centimetres of water that halve the signal; grid 10:1, CsI, 30x30 cm, 3 mm Al, 20 cm. Figures found earlier: 5 %. */
    @Regression
    @ParameterizedTest
    @CsvSource({"60, 3.0", "80, 3.5", "100, 3.8"})
    void the_signal_halves_over_the_thickness_found_earlier(double kilovolts, double centimetres) {
        var signal = aSignal(R10, CESIUM_IODIDE);
        double perCentimetre = Math.log(signal.perMAs(kilovolts, 19.5) / signal.perMAs(kilovolts, 20.5));
        assertThat(relativeError(Math.log(2) / perCentimetre, centimetres)).isLessThan(0.05);
    }

    /** Signal ratio for 15 % more tube voltage behind 20 cm, the same beam. Figures found earlier: 5 %. */
    @Regression
    @ParameterizedTest
    @CsvSource({"60, 2.28", "80, 1.86", "100, 1.55"})
    void fifteen_percent_more_tube_voltage_does_what_was_found_earlier(double kilovolts, double ratio) {
        var signal = aSignal(R10, CESIUM_IODIDE);
        assertThat(relativeError(signal.perMAs(kilovolts * 1.15, 20) / signal.perMAs(kilovolts, 20), ratio))
                .isLessThan(0.05);
    }

    /** Kilovolts per centimetre that keep the signal behind 20 cm, the same beam. Figures found earlier: 10 %. */
    @Regression
    @ParameterizedTest
    @CsvSource({"60, 2.2", "80, 3.3", "100, 5.6"})
    void a_centimetre_more_asks_for_the_kilovolts_found_earlier(double kilovolts, double kilovoltsPerCentimetre) {
        var signal = aSignal(R10, CESIUM_IODIDE);
        double perCentimetre = Math.log(signal.perMAs(kilovolts, 19.5) / signal.perMAs(kilovolts, 20.5));
        double perKilovolt = Math.log(signal.perMAs(kilovolts + 1, 20) / signal.perMAs(kilovolts - 1, 20)) / 2;
        assertThat(relativeError(perCentimetre / perKilovolt, kilovoltsPerCentimetre))
                .isLessThan(0.10);
    }

    @Test
    void quantities_and_plain_numbers_give_the_same_signal() {
        var signal = aSignal(R10, CESIUM_IODIDE);
        assertThat(signal.perMAs(TubeVoltage.kilovolts("64.8"), PartThickness.centimetres("12.4")))
                .isEqualTo(signal.perMAs(64.8, 12.4));
    }

    @ParameterizedTest
    @CsvSource({
        "39.9, 10, the tube voltage is 39.9 kV: the beam model holds from 40 to 150 kV",
        "150.1, 10, the tube voltage is 150.1 kV: the beam model holds from 40 to 150 kV",
        "NaN, 10, the tube voltage is NaN kV: the beam model holds from 40 to 150 kV",
        "80, 36.1, the thickness is 36.1 cm: the beam model holds from 0 to 36 cm",
        "80, -1, the thickness is -1 cm: the beam model holds from 0 to 36 cm",
        "80, NaN, the thickness is NaN cm: the beam model holds from 0 to 36 cm",
    })
    void outside_the_model_it_names_the_value_and_the_limits(double kilovolts, double centimetres, String message) {
        var signal = aSignal(R10, CESIUM_IODIDE);
        assertThat(signal.covers(kilovolts, centimetres)).isFalse();
        assertThatThrownBy(() -> signal.perMAs(kilovolts, centimetres))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource({"40, 0", "40, 36", "150, 0", "150, 36", "69.525, 20"})
    void at_its_limits_the_model_still_answers(double kilovolts, double centimetres) {
        var signal = aSignal(R10, CESIUM_IODIDE);
        assertThat(signal.covers(kilovolts, centimetres)).isTrue();
        double answer = signal.perMAs(kilovolts, centimetres);
        assertThat(relativeError(answer, directSum(R10, CESIUM_IODIDE, kilovolts, centimetres)))
                .isLessThan(TABLE_TOLERANCE);
    }

    @Test
    void many_threads_on_a_fresh_table_all_get_the_numbers_of_one_thread() throws Exception {
        var shared = BeamPhysics.load().receptorSignal(12, THREE_MILLIMETRES, R10, THIRTY_BY_THIRTY, CESIUM_IODIDE);
        var alone = aSignal(R10, CESIUM_IODIDE);
        Callable<double[]> sweep = () -> IntStream.rangeClosed(40, 150)
                .mapToDouble(kV -> shared.perMAs(kV, 17.3))
                .toArray();
        var expected = IntStream.rangeClosed(40, 150)
                .mapToDouble(kV -> alone.perMAs(kV, 17.3))
                .toArray();
        var threads = Executors.newFixedThreadPool(8);
        try {
            for (var answer : threads.invokeAll(Collections.nCopies(16, sweep))) {
                assertThat(answer.get()).isEqualTo(expected);
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
