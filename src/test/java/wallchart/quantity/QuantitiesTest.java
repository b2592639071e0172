package wallchart.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.Validation;

/** What all decimal quantities have in common, and what each has of its own. */
class QuantitiesTest {

    /** Quantity, its maker, its unit, its decimal places. */
    static Stream<Arguments> quantities() {
        return Stream.of(
                quantity("tube voltage", TubeVoltage::new, "kV", 1),
                quantity("tube current", TubeCurrent::new, "mA", 1),
                quantity("current-time product", CurrentTimeProduct::new, "mAs", 3),
                quantity("exposure time", ExposureTime::new, "ms", 3),
                quantity("distance", Distance::new, "cm", 4),
                quantity("part thickness", PartThickness::new, "cm", 2),
                quantity("electric power", ElectricPower::new, "kW", 3));
    }

    private static Arguments quantity(String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        return Arguments.of(name, maker, unit, decimals);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void the_same_value_written_otherwise_is_equal(
            String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        assertThat(maker.apply(new BigDecimal("1.6"))).isEqualTo(maker.apply(new BigDecimal("1.600000")));
        assertThat(maker.apply(new BigDecimal("1e2"))).isEqualTo(maker.apply(new BigDecimal("100")));
        assertThat(maker.apply(new BigDecimal("1.6"))).hasSameHashCodeAs(maker.apply(new BigDecimal("1.60")));
        assertThat(maker.apply(new BigDecimal("1.6"))).isNotEqualTo(maker.apply(new BigDecimal("1.7")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void it_is_written_as_people_do_with_its_unit(
            String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        assertThat(maker.apply(new BigDecimal("12.50"))).hasToString("12.5 " + unit);
        assertThat(maker.apply(new BigDecimal("1e2"))).hasToString("100 " + unit);
        assertThat(maker.apply(new BigDecimal("0.0"))).hasToString("0 " + unit);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void a_negative_value_is_refused(String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        assertThatThrownBy(() -> maker.apply(new BigDecimal("-0.1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(name)
                .hasMessageContaining("-0.1")
                .hasMessageContaining("cannot be negative");
    }

    @ParameterizedTest(name = "{0}, {3} decimals")
    @MethodSource("quantities")
    void a_finer_value_than_it_keeps_is_refused_and_not_rounded(
            String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        var finest = BigDecimal.ONE.movePointLeft(decimals);
        assertThat(maker.apply(finest)).isNotNull();
        assertThatThrownBy(() -> maker.apply(finest.movePointLeft(1)))
                .hasMessageContaining(name)
                .hasMessageContaining("at most " + decimals + " decimal place");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void a_number_too_long_to_write_out_is_refused_at_once(
            String name, Function<BigDecimal, Object> maker, String unit, int decimals) {
        for (var monster : new String[] {"1e999999999", "1e-999999999", "-1e999999999", "1e2147483647"}) {
            assertThatThrownBy(() -> maker.apply(new BigDecimal(monster)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .satisfies(refusal -> assertThat(refusal.getMessage()).hasSizeLessThan(200));
        }
    }

    @Test
    void quantities_are_ordered_by_value() {
        assertThat(TubeVoltage.kilovolts("62.5")).isLessThan(TubeVoltage.kilovolts(63));
        assertThat(TubeCurrent.milliamperes("12.5")).isLessThan(TubeCurrent.milliamperes(100));
        assertThat(CurrentTimeProduct.milliampereSeconds("0.8")).isLessThan(CurrentTimeProduct.milliampereSeconds(1));
        assertThat(ExposureTime.milliseconds("9.999")).isLessThan(ExposureTime.milliseconds(10));
        assertThat(Distance.centimetres("99.9999")).isLessThan(Distance.centimetres(100));
        assertThat(PartThickness.centimetres("9.99")).isLessThan(PartThickness.centimetres(10));
        assertThat(ElectricPower.kilowatts("9.5")).isLessThan(ElectricPower.kilowatts(32));
        assertThat(new AirKerma(9)).isLessThan(new AirKerma(10));
    }

    @Validation
    @Test
    void an_inch_is_2_54_centimetres_exactly() {
        // international inch, 1959
        assertThat(Distance.inches(new BigDecimal("1"))).isEqualTo(Distance.centimetres("2.54"));
        assertThat(Distance.inches(new BigDecimal("40"))).hasToString("101.6 cm");
        assertThat(Distance.inches(new BigDecimal("72"))).hasToString("182.88 cm");
        assertThat(Distance.inches(new BigDecimal("40.25"))).hasToString("102.235 cm");
        assertThatThrownBy(() -> Distance.inches(new BigDecimal("40.125"))).hasMessageContaining("40.125");
    }

    @Test
    void an_air_kerma_is_finite_and_not_negative() {
        for (double impossible : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new AirKerma(impossible)).hasMessageContaining("finite and not negative");
        }
        assertThat(new AirKerma(1824).inMilligrays()).isCloseTo(1.824, within(1e-12));
        assertThat(new AirKerma(1823.97)).hasToString("1824 uGy");
        assertThat(new AirKerma(0)).hasToString("0 uGy");
    }

    @Test
    void filtrations_in_one_beam_add_up_metal_by_metal() {
        var copper = new Filtration(new BigDecimal("1"), new BigDecimal("0.1"));
        assertThat(Filtration.aluminium("3.0").and(copper)).hasToString("4 mm Al + 0.1 mm Cu");
        assertThat(Filtration.NONE.and(Filtration.NONE).isNone()).isTrue();
        assertThat(copper.isNone()).isFalse();
    }

    @Test
    void a_field_fits_where_both_its_sides_do() {
        var plate = FieldSize.parse("24x30");
        assertThat(FieldSize.parse("24x30").fitsIn(plate)).isTrue();
        assertThat(FieldSize.parse("18x30.1").fitsIn(plate)).isFalse();
        assertThat(FieldSize.parse("24.1x30").fitsIn(plate)).isFalse();
        assertThat(plate.areaSquareCentimetres()).isEqualTo(720);
    }

    @Test
    void a_computed_value_is_cut_to_its_significant_digits() {
        assertThat(Decimals.significant(1823.97, 4)).isEqualTo("1824");
        assertThat(Decimals.significant(0.00012345, 3)).isEqualTo("0.000123");
        assertThat(Decimals.significant(0, 3)).isEqualTo("0");
        assertThat(Decimals.significant(-0.5, 3)).isEqualTo("-0.5");
        assertThat(Decimals.significant(9.99996, 4)).isEqualTo("10");
        assertThat(Decimals.significant(123456789, 4)).isEqualTo("123456789");
        assertThat(Decimals.significant(1e-20, 4)).isEqualTo("0.00000000000000000001");
        assertThat(Decimals.plain(new BigDecimal("0E+3"))).isEqualTo("0");
    }
}
