package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.anOutput;
import static wallchart.technique.TechniqueFixtures.PHYSICS;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartVersion;
import wallchart.chart.Finding.Severity;
import wallchart.equipment.RoomBuilder;
import wallchart.equipment.RoomRevision;

/** Whether anybody hears of a tube that moved a little each year since the chart was signed. */
class OutputWatchTest {

    /** Signed as version 1 on 2026-01-05. */
    private static final ChartVersion CHART = aChart().with(aRow()).version();

    private final OutputWatch watch = new OutputWatch(new ExposureModel(PHYSICS));

    /** In force from the days of their years on, the first before the signature. */
    private static List<RoomRevision> states(RoomBuilder... rooms) {
        var states = new ArrayList<RoomRevision>();
        for (var room : rooms) {
            int number = states.size() + 1;
            var from =
                    Instant.parse((2025 + states.size()) + "-01-01T12:00:00Z").plusSeconds(86_400L * 30 * number);
            states.add(new RoomRevision(number, "sha256:" + room.room().hashCode(), from, "physicist", room.room()));
        }
        return states;
    }

    private Optional<OutputSinceSigning> newest(RoomBuilder... rooms) {
        var states = states(rooms);
        return watch.since(CHART, states.get(states.size() - 1), states);
    }

    private static RoomBuilder measured(String day, String factor) {
        return aRoom().withOutput(anOutput(day, factor));
    }

    @Test
    void two_steps_of_nine_percent_are_told_though_neither_was_notable_by_itself() {
        var first = measured("2025-01-20", "1");
        var second = measured("2026-02-20", "0.91");
        var third = measured("2027-03-20", "0.8281");
        var key = CHART.content().rows().get(0).key();
        assertThat(newest(first, second).orElseThrow().finding()).isEmpty();
        assertThat(newest(first, second).orElseThrow().caution(key)).isEmpty();
        var moved = newest(first, second, third).orElseThrow();
        assertThat(moved.caution(key))
                .contains("output measured 2027-03-20 is 17.2 % under that at signing of version 1:"
                        + " tell the lead radiographer");
        var finding = moved.finding().orElseThrow();
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.reason())
                .contains("17.2 % under", "x 0.828", "then measured 2025-01-20, now measured 2027-03-20")
                .contains("for 1 of 1 rows, " + key);
    }

    @Test
    void a_tenth_is_no_caution_and_a_little_more_is() {
        var first = measured("2025-01-20", "1");
        assertThat(newest(first, measured("2026-02-20", "1.10")).orElseThrow().finding())
                .isEmpty();
        assertThat(newest(first, measured("2026-02-20", "1.102")).orElseThrow().finding())
                .isPresent();
        assertThat(newest(first, measured("2026-02-20", "1.102")).orElseThrow().finding())
                .isPresent();
    }

    @Test
    void a_tube_that_is_no_longer_measured_is_told_too() {
        var moved =
                newest(measured("2025-01-20", "0.5"), aRoom().uncalibrated()).orElseThrow();
        assertThat(moved.caution(CHART.content().rows().get(0).key()).orElseThrow())
                .startsWith("output by the beam model, not measured, is ")
                .contains("% over");
    }

    @Test
    void the_equipment_of_the_signature_says_nothing_and_neither_does_another_grid() {
        assertThat(newest(measured("2025-01-20", "1"))).isEmpty();
        assertThat(newest(
                        measured("2025-01-20", "1"), measured("2025-01-20", "1").withName("Room one, repainted")))
                .isEmpty();
    }

    @Test
    void a_version_signed_before_any_equipment_is_held_against_the_first() {
        var states = states(measured("2025-01-20", "1"), measured("2026-02-20", "0.5"));
        var late = states.stream()
                .map(state -> new RoomRevision(
                        state.number(),
                        state.digest(),
                        state.inForceFrom().plusSeconds(86_400L * 3650),
                        "physicist",
                        state.room()))
                .toList();
        assertThat(OutputWatch.atSigning(CHART, late).number()).isOne();
        assertThat(watch.since(CHART, late.get(1), late).orElseThrow().finding())
                .isPresent();
    }

    @Test
    void where_only_a_tube_voltage_that_no_row_uses_moved_the_chart_is_told_and_the_row_is_not() {
        var moved = new OutputSinceSigning(
                3,
                Optional.empty(),
                Optional.empty(),
                Map.of(CHART.content().rows().get(0).key(), 1.02),
                OptionalDouble.of(0.8));
        assertThat(moved.caution(CHART.content().rows().get(0).key())).isEmpty();
        assertThat(moved.finding().orElseThrow().reason()).contains("20 % under", "at that of no row");
    }
}
