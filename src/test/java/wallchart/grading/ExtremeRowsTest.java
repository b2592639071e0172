package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.grading.GradingFixtures.CHECK;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.chart;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.chart.ChartContent;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Filtration;

/** Whatever a draft holds, the check says something: finite numbers or a sentence, never a fault. */
class ExtremeRowsTest {

    static Stream<RowBuilder> rows() {
        return Stream.of(
                aRow(18, 24).withKV("0"),
                aRow(18, 24).withKV("39.9"),
                aRow(18, 24).withKV("40"),
                aRow(18, 24).withKV("150"),
                aRow(18, 24).withKV("999999"),
                aRow(18, 24).withMAs("0.001"),
                aRow(18, 24).withMAs("999999999"),
                aRow(0, 60).withReferenceThickness("0"),
                aRow(0, 36).withReferenceThickness("36"),
                aRow(1, 99999999).withReferenceThickness("1").withMethod("fixed"),
                aRow(18, 24).withBand("18", "18.01"),
                aRow(18, 24).withBand("18.37", "18.52"),
                aRow(0, 60).withReferenceThickness("0").withMethod("kv-per-cm", "10"),
                aRow(0, 60).withReferenceThickness("60").withMethod("kv-per-cm", "10"),
                aRow(0, 60).withReferenceThickness("0").withMethod("mas-per-cm", "0.01"),
                aRow(0, 60).withReferenceThickness("36").withMethod("mas-per-cm", "0.01"),
                aRow(18, 24).withMethod("kv-per-cm").withKVWindow("140", "150"),
                aRow(18, 24).withMethod("kv-per-cm").withKVWindow("20", "30"),
                aRow(18, 24).withSid("0"),
                aRow(18, 24).withSid("30"),
                aRow(18, 24).withSid("1000000"),
                aRow(18, 24).withReceptor("dr1", "1x1"),
                aRow(18, 24).withReceptor("dr1", "999x999"),
                aRow(18, 24).withReceptor("none", "18x24"),
                aRow(18, 24).with(Filtration.aluminium("60")),
                aRow(18, 24).with(Filtration.aluminium("57")),
                aRow(18, 24).withTargetExposureIndex(0),
                aRow(18, 24).withTargetExposureIndex(-5),
                aRow(18, 24).withTargetExposureIndex(Integer.MAX_VALUE),
                aRow(18, 24).at(SupportKind.MOBILE),
                aRow(18, 24).withMethod("fixed").withAec(0, "999999", Chamber.LEFT));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_number_is_finite_and_what_is_not_predicted_has_its_sentence(RowBuilder row) {
        var report = CHECK.check(ROOM, chart(row));

        for (var checked : report.examinations().get(0).rows()) {
            assertThat(checked.curve().isEmpty() && checked.notPredicted().isEmpty())
                    .isFalse();
            assertThat(checked.curve()).allSatisfy(point -> {
                assertThat(point.decibels()).isFinite();
                assertThat(point.kV()).isBetween(40.0, 150.0);
                assertThat(point.mAs()).isFinite().isPositive();
            });
            assertThat(checked.grades()).allSatisfy(grade -> {
                grade.errorPercent().ifPresent(error -> assertThat(error).isFinite());
                grade.instead().ifPresent(instead -> assertThat(instead).isFinite());
                assertThat(grade.text()).doesNotContain("NaN", "Infinity");
            });
        }
        assertThat(report.findings())
                .allSatisfy(finding -> assertThat(finding.reason()).doesNotContain("NaN", "Infinity"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_change_that_brings_it_is_told_something(RowBuilder row) {
        var changed = CHECK.compare(ROOM, ChartContent.EMPTY, chart(row));

        assertThat(changed.asBefore()).isEmpty();
    }
}
