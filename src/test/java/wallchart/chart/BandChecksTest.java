package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.Finding.Severity;
import wallchart.equipment.Room;

/** What concerns several rows, or the adjustments. */
class BandChecksTest {

    private static final Room ROOM = aRoom().room();
    private static final ChartRules RULES = ChartRules.adultsOnly();

    @Test
    void a_chart_without_rows_is_refused() {
        assertThat(ChartCheck.check(ChartContent.EMPTY, ROOM, RULES))
                .singleElement()
                .satisfies(finding -> assertThat(finding.isBlocking()).isTrue());
    }

    @Test
    void the_same_row_twice_is_refused_once() {
        assertThat(onBands(aChart().withBand(18, 24).withBand(18, 24)))
                .singleElement()
                .hasToString("blocking: LSPINE/ap/adult/table-bucky/18-24 bandFromCm:"
                        + " stands more than once in the chart: keep one of the rows");
    }

    @Test
    void overlapping_bands_are_refused_whatever_their_order() {
        assertThat(onBands(aChart().withBand(23, 30).withBand(18, 24)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.isBlocking()).isTrue();
                    assertThat(finding.reason()).contains("23-30 cm overlaps 18-24 cm");
                });
    }

    @Test
    void a_band_inside_a_wide_one_is_found_behind_its_neighbour() {
        assertThat(onBands(aChart().withBand(10, 30).withBand(12, 14).withBand(20, 22)))
                .hasSize(2)
                .allMatch(Finding::isBlocking);
    }

    @Test
    void a_gap_between_neighbours_is_a_caution() {
        assertThat(onBands(aChart().withBand(18, 24).withBand(26, 30)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.reason()).contains("from 24 cm to 26 cm gets no technique");
                });
    }

    @Test
    void bands_of_another_group_or_support_are_no_neighbours() {
        assertThat(onBands(aChart().withBand(18, 24)
                        .with(aRow().forGroup("under-10-kg").withBand(10, 20))))
                .isEmpty();
    }

    private static List<Finding> onBands(ChartBuilder chart) {
        return BandChecks.check(chart.content().rows());
    }

    @Test
    void an_adjustment_name_stands_once() {
        var content = aChart().withBand(18, 24)
                .with(addingKV("cast", "5"))
                .with(timesMAs("cast", "2"))
                .content();
        assertThat(ChartCheck.check(content, ROOM, RULES))
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("adjustment cast stands more than once"));
    }

    @Test
    void an_adjustment_label_has_a_limit() {
        var longLabel =
                new Adjustment("cast", "x".repeat(81), addingKV("cast", "5").effect(), "");
        assertThat(AdjustmentChecks.check(List.of(longLabel)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("81 characters"));
    }
}
