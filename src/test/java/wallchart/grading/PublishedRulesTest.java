package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.grading.Grade.Rule;
import wallchart.technique.Arrangement;

/**
 * What grading says of the trade's rules, against a calculation of the same beam model written by others than this program: tungsten
 * spectrum of Tucker, Barnes and Chakraborty (Med Phys 18:211, 1991), 12 degrees, 3 mm Al; 20 cm of water, field 30x30 cm, grid 10:1,
 * a caesium iodide layer of 0.20 g/cm2. Tolerances are those it was given with: 5 %, kV per cm 10 %.
 */
class PublishedRulesTest {

    private static RowBuilder aRow(String kV) {
        return ChartFixtures.aRow()
                .withBand(18, 22)
                .withKV(kV)
                .withMAs("20")
                .withReceptor("dr1", "30x30")
                .withSid("115");
    }

    private static Grade grade(RowBuilder row, Rule rule) {
        var grades = GradingFixtures.CHECK
                .check(GradingFixtures.UNCALIBRATED, GradingFixtures.chart(row))
                .examinations()
                .get(0)
                .rows()
                .get(0)
                .grades();
        return grades.stream().filter(grade -> grade.rule() == rule).findFirst().orElseThrow();
    }

    @Validation
    @ParameterizedTest
    @CsvSource({"60, 3.0", "80, 3.5", "100, 3.8"})
    void the_mas_doubles_over_so_many_centimetres(String kV, double centimetres) {
        var grade = grade(aRow(kV).withMethod("mas-per-cm", "5"), Rule.THICKNESS);

        assertThat(grade.instead().getAsDouble()).isCloseTo(centimetres, Percentage.withPercentage(5));
        assertThat(grade.text()).contains("at " + kV + " kV behind 20 cm mAs doubles per ", "the row says 5");
    }

    @Validation
    @ParameterizedTest
    @CsvSource({"60, 2.2", "80, 3.3", "100, 5.6"})
    void so_many_kilovolts_for_each_centimetre_keep_the_exposure(String kV, double perCentimetre) {
        var grade = grade(aRow(kV).withMethod("kv-per-cm", "2"), Rule.THICKNESS);

        assertThat(grade.instead().getAsDouble()).isCloseTo(perCentimetre, Percentage.withPercentage(10));
        assertThat(grade.text()).contains("kV per cm keep the exposure, the row says 2");
    }

    /** The rule says twice the exposure: with half the mAs it is off by half of what it misses. */
    @Validation
    @ParameterizedTest
    @CsvSource({"60, 2.28, USABLE", "80, 1.86, GOOD", "100, 1.55, POOR"})
    void fifteen_percent_more_kilovolts_give_so_many_times_the_exposure(String kV, double times, Verdict verdict) {
        var grade = grade(aRow(kV), Rule.FIFTEEN_PERCENT);

        assertThat(grade.instead().getAsDouble()).isCloseTo(times, Percentage.withPercentage(5));
        assertThat(grade.errorPercent().getAsDouble()).isCloseTo((times / 2 - 1) * 100, within(times / 2 * 5));
        assertThat(grade.verdict()).isEqualTo(verdict);
    }

    /** From what the doubling thicknesses above say of a rule of 5 cm over 2 cm: 2^(2/5 - 2/d). Tolerance from 5 % on d. */
    @Validation
    @ParameterizedTest
    @CsvSource({"60, 3.0", "80, 3.5", "100, 3.8"})
    void the_error_is_what_the_difference_of_the_rates_comes_to(String kV, double centimetres) {
        var grade = grade(aRow(kV).withMethod("mas-per-cm", "5"), Rule.THICKNESS);
        double thinEnd = Math.pow(2, 2 / centimetres - 2 / 5.0);

        assertThat(grade.errorPercent().getAsDouble()).isCloseTo((thinEnd - 1) * 100, within(3.5));
        assertThat(grade.text()).contains("at 18 cm the receptor gets", "% more");
    }

    @Test
    void verdicts_change_at_5_10_and_20_percent_either_way() {
        assertThat(Arrays.asList(1.049, 0.951, 1.051, 0.949, 1.099, 1.101, 0.899, 1.199, 0.801, 1.201, 0.799))
                .extracting(ratio -> Verdict.of(ratio, 0.05))
                .containsExactly(
                        Verdict.CANNOT_TELL,
                        Verdict.CANNOT_TELL,
                        Verdict.GOOD,
                        Verdict.GOOD,
                        Verdict.GOOD,
                        Verdict.USABLE,
                        Verdict.USABLE,
                        Verdict.USABLE,
                        Verdict.USABLE,
                        Verdict.POOR,
                        Verdict.POOR);
    }

    @Test
    void a_fixed_technique_is_told_what_the_thickness_does() {
        var grade = grade(aRow("80").withMethod("fixed"), Rule.THICKNESS);

        assertThat(grade.verdict()).isEqualTo(Verdict.POOR);
        assertThat(grade.text()).contains("mAs doubles per 3.5 cm, the row keeps the same technique");
    }

    @Test
    void the_attenuation_method_is_the_model_itself() {
        var grade = grade(aRow("80").withMethod("attenuation"), Rule.THICKNESS);

        assertThat(grade.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(grade.errorPercent().getAsDouble()).isZero();
        assertThat(grade.text()).endsWith("the receptor gets as much");
    }

    /** 140 kV and 15 % leave the model: the rule is graded downwards there. */
    @Test
    void near_the_end_of_the_model_the_fifteen_percent_rule_is_graded_downwards() {
        var grade = grade(aRow("140"), Rule.FIFTEEN_PERCENT);

        assertThat(grade.about()).isEqualTo("121.7 kV");
        assertThat(grade.text()).contains("kV divided by 1.15", "with double the mAs the receptor gets");
        assertThat(grade.errorPercent().getAsDouble()).isPositive();
    }

    @Test
    void each_other_grid_of_the_support_is_graded_by_what_it_does_to_the_receptor() {
        var row = aRow("80");
        var how = Arrangement.find(GradingFixtures.UNCALIBRATED, row.row()).orElseThrow();
        double behindGrid = GradingFixtures.MODEL.signalPerMAs(how, 80, 20);
        double without = GradingFixtures.MODEL.signalPerMAs(how.with(Optional.empty()), 80, 20);
        double factor = how.grid().orElseThrow().factorAt(80);

        var grade = grade(row, Rule.GRID);

        assertThat(grade.about()).isEqualTo("none");
        assertThat(grade.instead().getAsDouble()).isCloseTo(behindGrid / without, Percentage.withPercentage(0.1));
        assertThat(grade.errorPercent().getAsDouble())
                .isCloseTo((without / behindGrid / factor - 1) * 100, within(0.2));
        assertThat(grade.text()).contains("no grid instead of g10 needs x");
    }

    @Test
    void the_fifteen_percent_rule_says_where_a_row_works_with_it() {
        assertThat(grade(aRow("80").withMethod("fixed"), Rule.FIFTEEN_PERCENT).text())
                .doesNotContain("in use");
        assertThat(grade(aRow("80.5").withMethod("fixed"), Rule.FIFTEEN_PERCENT).text())
                .endsWith("; in use, as 80.5 kV is no station");
        assertThat(grade(aRow("80").withMethod("kv-per-cm", "3").withKVWindow("78", "83"), Rule.FIFTEEN_PERCENT)
                        .text())
                .endsWith("; in use where the kV meets its limit inside the band");
    }
}
