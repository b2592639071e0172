package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.Room;

/** The 15 % rule as a power law, and the kV and mAs forms of cast and condition; common practice, no source. */
@Validation
class VoltageValidationTest {

    private static final Room ROOM = aHandbookRoom().room();

    @Test
    void the_exponent_is_that_of_15_percent_for_a_doubling() {
        // definition: 1.15^n = 2, n = 4.96
        assertThat(ExposureArithmetic.FIFTEEN_PERCENT_EXPONENT).isCloseTo(4.96, within(0.005));
        assertThat(ExposureArithmetic.voltageFactor(115, 100)).isCloseTo(2, within(1e-12));
    }

    @Test
    void a_kv_limit_15_percent_up_twice_quarters_the_mas() {
        // common practice, no source: 100 kV 30 mAs -> 132.25 kV (1.15^2) 7.5 mAs
        var row = aHandbookRow().withKV("100").withMAs("30").withKVWindow("132.2", "132.3");
        assertThat(ExposureArithmetic.voltageFactor(100, 132.25) * 30).isCloseTo(7.5, within(1e-12));
        var window = row.copy().withKVWindow("132", "140");
        var technique = found(ROOM, window, aQuery().of(row.row()));
        assertThat(technique.exact().kV()).isEqualTo(132);
        // 132 kV is 0.19 % under 1.15^2 x 100, which is 0.94 % in mAs
        assertThat(technique.exact().mAs()).isCloseTo(7.5, within(7.5 * 0.01));
    }

    @Test
    void fifteen_percent_less_by_the_rule_of_thumb_is_more_than_half_the_power_law_step() {
        // common practice, no source: 60 kV -> 51 kV "halves" the receptor exposure; by the power law it takes 52.17 kV
        assertThat(ExposureArithmetic.voltageFactor(60, 60 / 1.15)).isCloseTo(2, within(1e-12));
        assertThat(60 / 1.15).isCloseTo(52.17, within(0.005));
        // 0.85^4.9595 = 0.4467: the rule of thumb down gives 45 % and not 50 %
        assertThat(1 / ExposureArithmetic.voltageFactor(60, 51)).isCloseTo(0.4467, within(0.0005));
        var row = aHandbookRow().withKVWindow("40", "51");
        assertThat(found(ROOM, row, aQuery().of(row.row())).exact().mAs()).isCloseTo(10 / 0.4467, within(0.02));
    }

    @Test
    void the_rule_of_thumb_is_not_its_own_inverse_but_the_power_law_is() {
        // definition: x 1.15 x 0.85 = 0.9775, the exact inverse of +15 % is -13.04 %
        assertThat(1.15 * 0.85).isCloseTo(0.9775, within(1e-12));
        assertThat((1 / 1.15 - 1) * 100).isCloseTo(-13.04, within(0.005));
        double thereAndBackByThumb =
                ExposureArithmetic.voltageFactor(60, 69) * ExposureArithmetic.voltageFactor(69, 69 * 0.85);
        assertThat(thereAndBackByThumb).isGreaterThan(1.11);
        assertThat(ExposureArithmetic.voltageFactor(60, 69) * ExposureArithmetic.voltageFactor(69, 60))
                .isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest(name = "+{0} kV at 60 kV is x {1} receptor exposure ({2})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            5 | 1.49 | small or medium plaster, common practice, no source; by the power law
            7 | 1.73 | small or medium plaster, common practice, no source; by the power law
            """)
    void a_cast_in_kilovolts_is_worth_so_much(String kV, double expected, String source) {
        var row = aHandbookRow();
        var chart = aChart().with(row).with(addingKV("cast", kV));
        var exact = found(ROOM, chart, aQuery().of(row.row()).with("cast")).exact();
        assertThat(exact.mAs()).isEqualTo(10);
        assertThat(ExposureArithmetic.voltageFactor(exact.kV(), 60)).as(source).isCloseTo(expected, within(0.005));
    }

    @ParameterizedTest(name = "x {0} takes 10 mAs to {1} mAs ({2})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            2   | 20 | dry plaster, common practice, no source
            3   | 30 | wet plaster, common practice, no source
            1.5 | 15 | small or medium plaster, from memory
            """)
    void a_cast_in_mas_multiplies_the_mas(String factor, double expected, String source) {
        var row = aHandbookRow();
        var chart = aChart().with(row).with(timesMAs("cast", factor));
        var exact = found(ROOM, chart, aQuery().of(row.row()).with("cast")).exact();
        assertThat(exact.kV()).isEqualTo(60);
        assertThat(exact.mAs()).as(source).isCloseTo(expected, within(1e-12));
    }
}
