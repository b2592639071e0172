package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.planning.PlanningFixtures.MODEL;
import static wallchart.planning.PlanningFixtures.everything;
import static wallchart.planning.PlanningFixtures.transferred;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.DemoRoom;
import wallchart.chart.ChartContent;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.physics.ReceptorResponse;
import wallchart.technique.Arrangement;

/** Every row of the demo department, to another room and back. */
class RoundTripTest {

    /** The widest step between stations is from 3 to 4 mAs, in room r2, 1.25 dB. */
    private static final double ONE_STATION_DB = 1.25;

    private static final List<DemoRoom> ROOMS = DemoRoom.all();

    private static DemoRoom room(String id) {
        return ROOMS.stream()
                .filter(demo -> demo.room().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Row[] rows(DemoRoom demo) {
        return demo.versions().get(1).content().rows().toArray(Row[]::new);
    }

    /** What a row does at its receptor, as both kinds of receptor can be compared: air kerma per target. */
    private static double kermaPerTarget(Room room, Row row, ReceptorResponse response) {
        var how = Arrangement.find(room, row).orElseThrow();
        double kV = row.setting().kV().inKilovolts();
        return MODEL.signalPerMAs(how, response, kV, row.referenceThickness().inCentimetres())
                * row.setting().control().mAs().inMilliampereSeconds()
                / row.setting().targetExposureIndex().orElse(how.receptor().targetExposureIndex());
    }

    /** By examination and reference thickness: a band may have lost an end on the way. */
    private static Row original(DemoRoom from, Row returned) {
        return Stream.of(rows(from))
                .filter(row -> row.key().examination().equals(returned.key().examination()))
                .filter(row -> row.referenceThickness().equals(returned.referenceThickness()))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"r1, r2, AIR_KERMA", "r2, r1, AIR_KERMA", "r1, r3, CESIUM_IODIDE", "r3, r1, CESIUM_IODIDE"})
    void there_and_back_the_receptor_has_what_it_had_within_one_station(
            String home, String away, ReceptorResponse response) {
        var from = room(home);
        var to = room(away).room();
        var there = transferred(from.room(), to, rows(from));
        assertThat(there.rows()).hasSizeGreaterThan(60);
        var back = transferred(
                to, from.room(), there.rows().stream().map(ProposedRow::row).toArray(Row[]::new));
        int compared = 0;
        for (var returned : back.rows()) {
            var key = returned.row().key();
            var original = original(from, returned.row());
            var away1 = there.rows().stream()
                    .filter(row ->
                            row.row().key().equals(returned.origin().row().orElseThrow()))
                    .findFirst()
                    .orElseThrow();
            double shift = 10
                    * Math.log10(kermaPerTarget(from.room(), returned.row(), response)
                            / kermaPerTarget(from.room(), original, response));
            assertThat(shift)
                    .as(key.toString())
                    .isCloseTo(away1.roundingDeviation() + returned.roundingDeviation(), within(1e-6));
            assertThat(Math.abs(shift)).as(key.toString()).isLessThanOrEqualTo(ONE_STATION_DB);
            compared++;
        }
        assertThat(compared).isGreaterThan(50);
    }

    @Test
    void every_row_of_a_room_is_proposed_or_left_out_with_a_reason() {
        for (var from : ROOMS) {
            for (var to : ROOMS) {
                var rows = rows(from);
                var proposal = transferred(from.room(), to.room(), rows);
                var named = new ArrayList<String>();
                proposal.rows()
                        .forEach(row -> named.add(
                                row.origin().row().map(RowKey::toString).orElseThrow()));
                proposal.leftOut().forEach(left -> named.add(left.row()));
                assertThat(named.stream().distinct())
                        .containsExactlyInAnyOrderElementsOf(List.of(rows).stream()
                                .map(row -> row.key().toString())
                                .toList());
                assertThat(proposal.leftOut()).allMatch(left -> !left.reason().isBlank());
                assertThat(proposal.statement().length()).isLessThan(1900);
            }
        }
    }

    @Test
    void the_demo_brought_from_a_room_to_itself_is_the_same_chart() {
        for (var demo : ROOMS) {
            var content = demo.versions().get(1).content();
            var proposal = transferred(demo.room(), demo.room(), everything(demo.room()), content, rows(demo));
            assertThat(proposal.rows())
                    .as(demo.room().id())
                    .allMatch(row -> proposal.kind(row) == ChartProposal.Kind.SAME);
            assertThat(proposal.leftOut()).isEmpty();
        }
    }

    @Test
    void a_bucky_room_is_brought_to_a_mobile_unit_with_what_stands_for_what() {
        var from = room("r1");
        var asked = new RoomTransfer(
                "r1",
                2,
                Optional.empty(),
                List.of(),
                RoomTransfer.Scope.ALL,
                Map.of(SupportKind.TABLE_BUCKY, SupportKind.MOBILE),
                Map.of("g10-f110", "g6-parallel"),
                Map.of("dr-table", "dr-large"));
        var proposal = transferred(from.room(), room("r3").room(), asked, ChartContent.EMPTY, rows(from));
        assertThat(proposal.rows())
                .filteredOn(row -> row.row().key().examination().support() == SupportKind.MOBILE)
                .isNotEmpty()
                .allMatch(row -> row.row().setting().grid().equals("g6-parallel")
                        || row.row().setting().grid().equals("none"))
                .allMatch(row -> row.row().setting().control() instanceof ExposureControl.Manual);
    }
}
