package wallchart.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenQuantitiesTest {

    @ParameterizedTest
    @ValueSource(strings = {"none", "0.1 mm Cu", "1 mm Al", "1 mm Al + 0.1 mm Cu"})
    void a_filtration_is_read_as_it_is_written(String text) {
        assertThat(Filtration.parse(text)).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "1", "1 mm Al 0.1 mm Cu", "0.1 mm Cu + 1 mm Al", "1e9 mm Al", " + 1 mm Cu", "-1 mm Al"})
    void other_words_are_no_filtration(String text) {
        assertThatThrownBy(() -> Filtration.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"24", "24x", "1e9x1e9", "24x1e999999999", "30x24", "0x5", "24x30x2"})
    void other_words_are_no_field_size(String text) {
        assertThatThrownBy(() -> FieldSize.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"24x30", "24 x 30", " 24.0x30 "})
    void a_field_size_has_one_form(String text) {
        assertThat(FieldSize.parse(text)).hasToString("24x30");
    }

    /** Against java.math.BigDecimal, which rounds the binary value exactly; at a tie either neighbour is right. */
    @Test
    void a_computed_value_is_within_half_a_unit_of_its_last_digit_and_has_no_idle_zeros() {
        var random = new Random(20_261_125);
        for (int i = 0; i < 50_000; i++) {
            double value = Math.pow(10, random.nextDouble() * 24 - 12);
            int digits = 1 + random.nextInt(9);
            var written = Decimals.significant(value, digits);
            assertThat(written).matches("0|[1-9][0-9]*|(0|[1-9][0-9]*)\\.[0-9]*[1-9]");
            var exact = new BigDecimal(value);
            int lastPlace = Math.min(0, exact.precision() - exact.scale() - digits);
            var halfUnit = BigDecimal.valueOf(5, 1 - lastPlace).multiply(new BigDecimal("1.0000001"));
            assertThat(new BigDecimal(written).subtract(exact).abs())
                    .as("%s to %d digits: %s", value, digits, written)
                    .isLessThanOrEqualTo(halfUnit);
        }
    }
}
