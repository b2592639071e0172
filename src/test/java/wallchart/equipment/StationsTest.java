package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.equipment.EquipmentFixtures.numbers;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** The stations of a console: which is nearest, which way a tie goes, where they end. */
class StationsTest {

    private static VoltageStations kV(String digits) {
        return new VoltageStations(
                numbers(digits).stream().map(TubeVoltage::new).toList());
    }

    private static CurrentTimeStations mAs(String digits) {
        return new CurrentTimeStations(
                numbers(digits).stream().map(CurrentTimeProduct::new).toList());
    }

    private static CurrentStations mA(String digits) {
        return new CurrentStations(
                numbers(digits).stream().map(TubeCurrent::new).toList());
    }

    @ParameterizedTest(name = "{0} kV goes to {1} kV")
    @CsvSource({"10, 50", "54.9, 50", "55, 60", "64.99, 60", "65, 70", "200, 70"})
    void the_nearest_kv_station_wins_and_half_goes_up(double wanted, String station) {
        assertThat(kV("50 60 70").nearest(wanted, 40, 150)).contains(TubeVoltage.kilovolts(station));
    }

    @Test
    void kv_stations_outside_the_limits_do_not_count() {
        assertThat(kV("50 60 70").nearest(68, 40, 65)).contains(TubeVoltage.kilovolts(60));
        assertThat(kV("50 60 70").nearest(52, 55, 150)).contains(TubeVoltage.kilovolts(60));
        assertThat(kV("50 60 70").nearest(60, 60, 60)).contains(TubeVoltage.kilovolts(60));
        assertThat(kV("50 60 70").nearest(60, 61, 69)).isEmpty();
    }

    @Test
    void a_sum_of_decimal_steps_that_misses_the_half_by_a_hair_still_goes_up() {
        double hair = 0.1 + 0.2 + 54.7 - 1e-14;
        assertThat(hair).isLessThan(55);
        assertThat(kV("50 60").nearest(hair, 40, 150)).contains(TubeVoltage.kilovolts(60));
        assertThat(kV("50 60").nearest(54.999, 40, 150)).contains(TubeVoltage.kilovolts(50));
    }

    @ParameterizedTest(name = "{0} mAs goes to {1} mAs")
    @CsvSource({"0.1, 4", "5.99, 4", "6, 4", "6.01, 9", "11.99, 9", "12, 9", "12.01, 16", "99, 16"})
    void the_nearest_mas_station_on_a_log_scale_wins_and_a_tie_goes_to_the_lower(double wanted, String station) {
        assertThat(mAs("4 9 16").nearest(wanted)).isEqualTo(CurrentTimeProduct.milliampereSeconds(station));
    }

    @Test
    void half_a_step_beyond_either_end_is_still_within() {
        // half of the last step: 16 x sqrt(16/9) = 21.33; of the first: 4 / sqrt(9/4) = 2.667
        assertThat(mAs("4 9 16").isAbove(21.33)).isFalse();
        assertThat(mAs("4 9 16").isAbove(21.34)).isTrue();
        assertThat(mAs("4 9 16").isBelow(2.667)).isFalse();
        assertThat(mAs("4 9 16").isBelow(2.666)).isTrue();
    }

    @Test
    void a_single_station_reaches_half_an_r10_step_either_way() {
        // 10^0.05 = 1.122
        assertThat(mAs("10").isAbove(11.22)).isFalse();
        assertThat(mAs("10").isAbove(11.23)).isTrue();
        assertThat(mAs("10").isBelow(8.913)).isFalse();
        assertThat(mAs("10").isBelow(8.912)).isTrue();
        assertThat(mAs("10").nearest(500)).isEqualTo(CurrentTimeProduct.milliampereSeconds(10));
    }

    @Test
    void ends_and_membership_are_those_of_the_list() {
        assertThat(mAs("4 9 16").smallest()).hasToString("4 mAs");
        assertThat(mAs("4 9 16").largest()).hasToString("16 mAs");
        assertThat(mAs("4 9 16").has(CurrentTimeProduct.milliampereSeconds("9.0")))
                .isTrue();
        assertThat(mAs("4 9 16").has(CurrentTimeProduct.milliampereSeconds(10))).isFalse();
        assertThat(kV("50 60").lowest()).hasToString("50 kV");
        assertThat(kV("50 60").highest()).hasToString("60 kV");
        assertThat(kV("50 60").has(TubeVoltage.kilovolts("60.0"))).isTrue();
        assertThat(kV("50 60").has(TubeVoltage.kilovolts(55))).isFalse();
    }

    @Test
    void stations_that_no_generator_has_are_refused() {
        assertThatThrownBy(() -> kV("19.9 60")).hasMessageContaining("19.9 kV").hasMessageContaining("20 kV");
        assertThatThrownBy(() -> kV("60 200.1")).hasMessageContaining("200.1 kV");
        assertThatThrownBy(() -> mAs("0 1")).hasMessageContaining("0 mAs");
        assertThatThrownBy(() -> mAs("1 2001")).hasMessageContaining("2001 mAs");
        assertThatThrownBy(() -> mA("0 10")).hasMessageContaining("0 mA");
        assertThatThrownBy(() -> mA("10 2000.1")).hasMessageContaining("2000.1 mA");
    }

    @Test
    void stations_are_ascending_each_once_and_at_least_one() {
        assertThatThrownBy(() -> mA("10 50 20")).hasMessageContaining("20 mA follows 50 mA");
        assertThatThrownBy(() -> kV("60 60")).hasMessageContaining("each once");
        assertThatThrownBy(() -> new CurrentStations(List.of())).hasMessageContaining("at least one");
    }

    @Property(tries = 500)
    void no_other_station_is_nearer(@ForAll @DoubleRange(min = 0.05, max = 900) double wanted) {
        var stations = new CurrentTimeStations(
                PreferredNumbers.R20_ROUNDED
                        .between(EquipmentFixtures.number("0.1"), EquipmentFixtures.number("630"))
                        .stream()
                        .map(CurrentTimeProduct::new)
                        .toList());
        var nearest = stations.nearest(wanted).inMilliampereSeconds();
        for (var other : stations.stations()) {
            assertThat(Math.abs(Math.log(nearest / wanted)))
                    .isLessThanOrEqualTo(Math.abs(Math.log(other.inMilliampereSeconds() / wanted)) + 1e-12);
        }
    }
}
