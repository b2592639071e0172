package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.grading.GradingFixtures.CHECK;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.physics.BeamPhysics;

/** What holds for every row and chart. */
class ContinuityPropertiesTest {

    @Property(tries = 60)
    void the_attenuation_method_keeps_the_receptor_exposure_everywhere_in_its_band(
            @ForAll @IntRange(min = 1, max = 28) int from,
            @ForAll @IntRange(min = 1, max = 8) int width,
            @ForAll @IntRange(min = 40, max = 150) int kV,
            @ForAll @IntRange(min = 1, max = 200) int mAs) {
        var row = aRow(from, from + width).withKV(String.valueOf(kV)).withMAs(String.valueOf(mAs));

        var checked = CHECK.check(ROOM, chart(row)).examinations().get(0);

        assertThat(checked.rows().get(0).curve()).isNotEmpty().allSatisfy(point -> assertThat(point.decibels())
                .isCloseTo(0, within(1e-9)));
        assertThat(checked.findings()).isEmpty();
    }

    @Property(tries = 40)
    void the_order_of_the_rows_changes_nothing_that_is_found(
            @ForAll @Size(min = 2, max = 5) List<@IntRange(min = 1, max = 60) Integer> mAs) {
        var rows = new ArrayList<Row>();
        for (int i = 0; i < mAs.size(); i++) {
            rows.add(aRow(10 + 3 * i, 13 + 3 * i)
                    .withMethod("kv-per-cm")
                    .withMAs(String.valueOf(mAs.get(i)))
                    .row());
        }
        var forwards = CHECK.check(ROOM, new ChartContent(rows, List.of()));
        Collections.reverse(rows);
        var backwards = CHECK.check(ROOM, new ChartContent(rows, List.of()));

        assertThat(backwards).isEqualTo(forwards);
    }

    /** Twice the mAs in every row is the same curve: only what stands between rows is looked at. */
    @Property(tries = 40)
    void as_much_more_in_every_row_moves_no_point_of_the_curve(
            @ForAll @Size(min = 2, max = 4) List<@IntRange(min = 1, max = 60) Integer> mAs) {
        var once = CHECK.check(ROOM, chartOf(mAs, 1)).examinations().get(0);
        var twice = CHECK.check(ROOM, chartOf(mAs, 2)).examinations().get(0);

        for (int row = 0; row < once.rows().size(); row++) {
            var points = once.rows().get(row).curve();
            for (int point = 0; point < points.size(); point++) {
                assertThat(twice.rows().get(row).curve().get(point).decibels())
                        .isCloseTo(points.get(point).decibels(), within(1e-9));
            }
        }
        assertThat(kinds(twice)).isEqualTo(kinds(once));
    }

    private static ChartContent chartOf(List<Integer> mAs, int times) {
        var rows = new ArrayList<Row>();
        for (int i = 0; i < mAs.size(); i++) {
            rows.add(aRow(10 + 3 * i, 13 + 3 * i)
                    .withMethod("mas-per-cm")
                    .withMAs(String.valueOf(mAs.get(i) * times))
                    .row());
        }
        return new ChartContent(rows, List.of());
    }

    private static LinkedHashSet<PhysicsFinding.Kind> kinds(ExaminationPhysics checked) {
        var kinds = new LinkedHashSet<PhysicsFinding.Kind>();
        checked.findings().forEach(finding -> kinds.add(finding.kind()));
        return kinds;
    }

    /** On a check that remembers nothing yet, where all of them work out the same beams at once. */
    @Example
    void many_threads_at_once_get_the_same_report() {
        var content = chart(GradingFixtures.honestRows());
        var fresh = new ChartPhysics(BeamPhysics.load(), List.of(), PhysicsLimits.DEFAULTS);

        var reports = IntStream.range(0, 32)
                .parallel()
                .mapToObj(unused -> fresh.check(ROOM, content))
                .distinct()
                .toList();

        assertThat(reports).containsExactly(CHECK.check(ROOM, content));
    }
}
