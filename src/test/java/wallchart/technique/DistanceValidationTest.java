package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.Room;
import wallchart.quantity.Distance;

/** Worked examples of the distance rule mAs2 = mAs1 (D2 / D1)^2 and of the inverse square law, asked of the rules themselves. */
@Validation
class DistanceValidationTest {

    private static final Room ROOM = aHandbookRoom().room();

    @ParameterizedTest(name = "{0} mAs at {1} {3} is {4} mAs at {2} {3} ({6})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
             40 |  40 |  72 | in | 129.6 | 0.05  | common practice, no source
             75 |  72 |  36 | in | 18.75 | 0.005 | common practice, no source
            160 |  40 |  56 | in | 313.6 | 0.05  | common practice, no source
             12 |  40 |  60 | in | 27    | 0.005 | common practice, no source
            120 | 200 | 100 | cm | 30    | 0.005 | common practice, no source
             15 | 140 | 180 | cm | 24.8  | 0.05  | common practice, no source
             12 |  80 |  40 | in | 3     | 0.005 | common practice, no source
              1 |  40 |  72 | in | 3.24  | 1e-12 | definition: (72/40)^2 is 3.24 exactly
            """)
    void the_mas_follows_the_square_of_the_distance(
            String mAs, String from, String to, String unit, double expected, double tolerance, String source) {
        var row = aHandbookRow()
                .withMAs(mAs)
                .withSid(distance(from, unit).centimetres().toPlainString());
        var technique = found(ROOM, row, aQuery().of(row.row()).atSid(distance(to, unit)));
        assertThat(technique.exact().mAs()).as(source).isCloseTo(expected, within(tolerance));
        assertThat(technique.exact().kV()).isEqualTo(60);
    }

    @Test
    void from_40_to_72_inches_is_exactly_3_24_fold() {
        assertThat(ExposureArithmetic.distanceFactor(
                        Distance.inches(new BigDecimal("40")), Distance.inches(new BigDecimal("72"))))
                .isCloseTo(3.24, within(1e-14));
    }

    @ParameterizedTest(name = "intensity {0} at {1} in is {3} at {2} in ({5})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
              5 | 40 | 36 | 6.17 | 0.005 | common practice, no source
              8 | 48 | 72 | 3.56 | 0.005 | common practice, no source
            200 | 12 | 48 | 12.5 | 0.005 | common practice, no source: 200 at 1 ft, asked at 4 ft
            """)
    void the_intensity_falls_with_the_square_of_the_distance(
            double intensity, double fromInches, double toInches, double expected, double tolerance, String source) {
        double atFirst = ExposureArithmetic.incidentAirKermaMicroGy(1, 1, fromInches * 2.54);
        double then = ExposureArithmetic.incidentAirKermaMicroGy(1, 1, toInches * 2.54);
        assertThat(intensity * then / atFirst).as(source).isCloseTo(expected, within(tolerance));
    }

    private static Distance distance(String value, String unit) {
        var number = new BigDecimal(value);
        return unit.equals("in") ? Distance.inches(number) : new Distance(number);
    }
}
