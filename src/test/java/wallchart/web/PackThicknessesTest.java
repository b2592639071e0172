package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.chart.Band;
import wallchart.quantity.PartThickness;

/** The lower end of a half-open band, then every half centimetre inside it. */
class PackThicknessesTest {

    @ParameterizedTest
    @CsvSource({
        "10, 12, 10 10.5 11 11.5",
        "10, 12.01, 10 10.5 11 11.5 12",
        "10.3, 11.5, 10.3 10.5 11",
        "10.49, 10.51, 10.49 10.5",
        "10.1, 10.3, 10.1",
        "0, 1, 0.01 0.5",
        "0, 0.3, 0.01"
    })
    void thicknesses_of_a_band(String from, String to, String expected) {
        assertThat(PackThicknesses.of(Band.centimetres(from, to)))
                .isEqualTo(List.of(expected.split(" ")).stream()
                        .map(PartThickness::centimetres)
                        .toList());
    }
}
