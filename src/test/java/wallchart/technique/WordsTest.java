package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "64.8, 64.8",
        "12.544, 12.54",
        "1.0000000001, 1",
        "0.00012345, 0.0001235",
        "9.99996, 10",
        "999.96, 1000",
        "12345.6, 12346",
        "-1.5, -1.5",
        "1E-20, 0.00000000000000000001",
        "NaN, NaN",
        "Infinity, Infinity"
    })
    void a_number_has_four_digits_and_no_exponent(double value, String written) {
        assertThat(Words.number(value)).isEqualTo(written);
    }

    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({"0.0511, +0.05 dB", "-0.516, -0.52 dB", "0.004, 0 dB", "-0.004, 0 dB", "3.0103, +3.01 dB"})
    void a_deviation_has_its_sign_and_two_decimals(double value, String written) {
        assertThat(Words.decibels(value)).isEqualTo(written);
    }

    @Property
    void what_is_written_is_within_half_a_digit_of_the_value(
            @ForAll @Scale(12) @DoubleRange(min = 1e-9, max = 1e6) double value) {
        double written = Double.parseDouble(Words.number(value));
        assertThat(Math.abs(written / value - 1)).isLessThan(0.0005001);
        assertThat(Words.number(-value)).isEqualTo("-" + Words.number(value));
        assertThat(Words.number(value)).doesNotContain("E");
    }
}
