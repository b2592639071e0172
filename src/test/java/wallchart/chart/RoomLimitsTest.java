package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.StationsPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.quantity.Filtration;

/** Rows in rooms that have less than the usual one. */
class RoomLimitsTest {

    private static final ChartRules RULES = ChartRules.adultsOnly();

    private static RowBuilder anAecRow() {
        return aRow().withAec(0, "200", Chamber.CENTRE);
    }

    @Test
    void a_focal_spot_the_tube_lacks_is_refused() {
        var tube = EquipmentFixtures.aTube();
        var small = aRoom().withTube(new TubePart(
                        tube.anodeAngleDeg(),
                        tube.totalFiltrationMmAl(),
                        null,
                        List.of(EquipmentFixtures.aSmallSpot()),
                        tube.output()))
                .room();
        assertThat(ChartCheck.check(aRow().row(), small, RULES))
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("no large focal spot"));
    }

    @Test
    void a_longest_time_is_kept_by_the_time_that_will_be_set_to_the_microsecond() {
        var generator = EquipmentFixtures.aGenerator();
        var room = aRoom().withGenerator(new GeneratorPart(
                        generator.waveform(),
                        generator.kV(),
                        generator.mAs(),
                        new StationsPart(EquipmentFixtures.numbers("300"), null, null, null, null),
                        generator.shortestTimeMs(),
                        generator.aec()))
                .room();
        var row = aRow().withMAs("10"); // at 300 mA for 33.333 ms
        assertThat(ChartCheck.check(row.withLongestTime("33.333").row(), room, RULES))
                .isEmpty();
        assertThat(ChartCheck.check(row.withLongestTime("33.332").row(), room, RULES))
                .extracting(Finding::field)
                .containsExactly("mAs");
    }

    @Test
    void an_aec_row_needs_a_generator_with_aec() {
        assertThat(ChartCheck.check(anAecRow().row(), aRoom().withoutAec().room(), RULES))
                .allMatch(finding -> finding.field().equals("aecChambers"))
                .extracting(Finding::reason)
                .contains("the generator of room r1 has no AEC: give mAs instead");
    }

    /** The beam model holds to 3 mm of copper: a row beyond would be refused whenever it is asked for. */
    @Test
    void attenuation_behind_more_filter_than_is_modelled_blocks() {
        assertThat(filtered("3.01", "attenuation")).singleElement().satisfies(finding -> {
            assertThat(finding.isBlocking()).isTrue();
            assertThat(finding.field()).isEqualTo("addedFiltration");
            assertThat(finding.reason())
                    .contains("would be refused whenever it is asked for", "3.01 mm Cu", "another thickness method");
        });
        assertThat(filtered("3", "attenuation")).isEmpty();
        assertThat(filtered("3.01", "fixed")).isEmpty();
    }

    private static List<Finding> filtered(String millimetresOfCopper, String method) {
        var row = aRow().with(Filtration.parse(millimetresOfCopper + " mm Cu")).withMethod(method);
        return ChartCheck.check(row.row(), aRoom().room(), RULES);
    }

    @Test
    void attenuation_is_refused_outside_the_tube_voltages_of_its_model() {
        var generator = EquipmentFixtures.aGenerator();
        var wide = aRoom().withGenerator(new GeneratorPart(
                        generator.waveform(),
                        new StationsPart(EquipmentFixtures.numbers("30 39 40 150"), null, null, null, null),
                        generator.mAs(),
                        generator.mA(),
                        generator.shortestTimeMs(),
                        generator.aec()))
                .room();
        assertThat(ChartCheck.check(
                        aRow().withKV("39").withMethod("attenuation").row(), wide, RULES))
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("modelled for 40 to 150 kV"));
        assertThat(ChartCheck.check(
                        aRow().withKV("40").withMethod("attenuation").row(), wide, RULES))
                .isEmpty();
    }
}
