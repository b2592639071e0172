package wallchart.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
}
