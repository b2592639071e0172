package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;

class PreferredNumbersTest {

    @Validation
    @ParameterizedTest(name = "{0} ({2})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            R10   | 1.00 1.25 1.60 2.00 2.50 3.15 4.00 5.00 6.30 8.00 | ISO 3:1973
            R'10  | 1.00 1.25 1.60 2.00 2.50 3.20 4.00 5.00 6.30 8.00 | ISO 497:1973
            R''10 | 1.0 1.2 1.5 2.0 2.5 3.0 4.0 5.0 6.0 8.0           | ISO 497:1973
            R'20  | 1.00 1.10 1.25 1.40 1.60 1.80 2.00 2.20 2.50 2.80 3.20 3.60 4.00 4.50 5.00 5.60 6.30 7.10 8.00 9.00 | ISO 497:1973
            """,
            quoteCharacter = '"')
    void a_series_has_the_numbers_of_its_standard(String symbol, String decade, String source) {
        var series = PreferredNumbers.find(symbol).orElseThrow();
        assertThat(series.decade()).as(source).isEqualTo(EquipmentFixtures.numbers(decade));
    }

    @Validation
    @Test
    void the_rounded_numbers_follow_their_root() {
        // ISO 3:1973: R10 and R20 are the 10th and 20th root of 10, rounded by at most 1.3 %
        assertFollows(PreferredNumbers.R10, 0.013);
        // ISO 497:1973: the more rounded, the further away; R''10 has 1.5 and 6 for 1.585 and 6.310, so up to 5.6 %
        assertFollows(PreferredNumbers.R10_ROUNDED, 0.013);
        assertFollows(PreferredNumbers.R10_MORE_ROUNDED, 0.056);
        assertFollows(PreferredNumbers.R20_ROUNDED, 0.022);
    }

    private static void assertFollows(PreferredNumbers series, double tolerance) {
        var decade = series.decade();
        for (int i = 0; i < decade.size(); i++) {
            double exact = Math.pow(10, i / (double) decade.size());
            assertThat(decade.get(i).doubleValue() / exact).isCloseTo(1, within(tolerance));
        }
    }

    @Test
    void a_range_has_both_its_bounds_and_every_decade_between() {
        assertThat(PreferredNumbers.R10_ROUNDED.between(new BigDecimal("0.5"), new BigDecimal("500")))
                .hasSize(31)
                .isSortedAccordingTo(BigDecimal::compareTo)
                .first()
                .asString()
                .startsWith("0.5");
    }

    @Test
    void a_bound_outside_the_series_is_refused_by_name() {
        assertThatThrownBy(() -> PreferredNumbers.R10_ROUNDED.between(new BigDecimal("0.5"), new BigDecimal("315")))
                .hasMessageContaining("315")
                .hasMessageContaining("R'10")
                .hasMessageContaining("list the stations");
        assertThatThrownBy(() -> PreferredNumbers.R10.between(new BigDecimal("5"), new BigDecimal("0.5")))
                .hasMessageContaining("from must be over 0 and not over to");
        assertThatThrownBy(() -> PreferredNumbers.R10.between(BigDecimal.ZERO, BigDecimal.ONE))
                .hasMessageContaining("from must be over 0");
    }
}
