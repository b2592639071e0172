package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.Room;

/** The thickness rules of the trade; common practice, no source, each rule as authors state it. */
@Validation
class ThicknessValidationTest {

    private static final Room ROOM = aHandbookRoom().room();

    @Test
    void a_variable_kilovoltage_chart_adds_2_kv_per_cm_to_its_base() {
        // common practice, no source: kV = base + 2 x cm; base 60, 13 cm -> 86 kV
        var row = aHandbookRow().withReferenceThickness("0").withMethod("kv-per-cm", "2");
        var exact = found(ROOM, row, aQuery().of(row.row()).ofThickness("13")).exact();
        assertThat(exact.kV()).isEqualTo(86);
        assertThat(exact.mAs()).isEqualTo(10);
    }

    @ParameterizedTest(name = "85 kV 8 mAs at 20 cm, doubling per {0} cm, is {2} mAs at {1} cm ({4})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            4    | 15 | 3.36  | 0.005 | common practice, no source
            5    | 15 | 4.0   | 1e-12 | common practice, no source
            4    | 24 | 16    | 1e-12 | common practice, no source: 4 cm doubles
            5    | 25 | 16    | 1e-12 | common practice, no source: 5 cm doubles
            4    | 21 | 9.512 | 0.004 | common practice, no source: x 1.189 per cm
            5    | 21 | 9.192 | 0.004 | common practice, no source: x 1.149 per cm
            5.28 | 21 | 9.12  | 0.004 | common practice, no source: x 1.140 per cm
            5.28 | 22 | 10.4  | 0.008 | common practice, no source: 30 % more per 2 cm doubles in 5.28 cm
            """)
    void the_mas_doubles_over_so_many_centimetres(
            String cmPerDoubling, String thickness, double expected, double tolerance, String source) {
        var row = aHandbookRow()
                .withKV("85")
                .withMAs("8")
                .withReferenceThickness("20")
                .withMethod("mas-per-cm", cmPerDoubling);
        var exact =
                found(ROOM, row, aQuery().of(row.row()).ofThickness(thickness)).exact();
        assertThat(exact.kV()).isEqualTo(85);
        assertThat(exact.mAs()).as(source).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0} kV per cm doubles the receptor exposure over {2} cm at {1} kV")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            2 |  50 | 3.75
            2 |  60 | 4.5
            2 |  70 | 5.25
            2 |  80 | 6.0
            2 | 100 | 7.5
            3 |  80 | 4.0
            3 | 100 | 5.0
            """)
    void kilovolts_per_centimetre_are_worth_less_the_higher_the_kv(String rate, String kV, String over) {
        // by the 15 % rule (common practice, no source): 15 % of the kV is a doubling
        var row = aHandbookRow().withKV(kV).withReferenceThickness("0").withMethod("kv-per-cm", rate);
        var exact = found(ROOM, row, aQuery().of(row.row()).ofThickness(over)).exact();
        double exposure = ExposureArithmetic.voltageFactor(exact.kV(), Double.parseDouble(kV));
        assertThat(exposure).isCloseTo(2, within(1e-9));
    }

    @Test
    void the_kv_rule_and_the_mas_rule_do_not_agree() {
        // 2 kV per cm equals a doubling in 4.5 cm at 60 kV, in 7.5 cm at 100 kV: no one rate in cm fits both
        double at60 = ExposureArithmetic.voltageFactor(60 + 2 * 5.0, 60);
        double at100 = ExposureArithmetic.voltageFactor(100 + 2 * 5.0, 100);
        assertThat(at60).isGreaterThan(ExposureArithmetic.doublingFactor(5, 5));
        assertThat(at100).isLessThan(ExposureArithmetic.doublingFactor(5, 5));
    }
}
