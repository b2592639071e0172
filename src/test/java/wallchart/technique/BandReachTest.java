package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartFixtures;
import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;
import wallchart.chart.RowBuilder;
import wallchart.equipment.RoomBuilder;

/** A signed band whose far end nobody can expose is told before somebody stands there with the patient. */
class BandReachTest {

    private static final BandReach REACH = new BandReach(new ExposureModel(PHYSICS));

    private static List<Finding> findings(RoomBuilder room, RowBuilder row) {
        return REACH.check(room.room(), aChart().with(row).content(), every -> true);
    }

    private static RowBuilder aDoublingRow() {
        return aHandbookRow().withMethod("mas-per-cm", "5").withBand(8, 20);
    }

    /**
     * mAs double every 5 cm from 10 mAs at 10 cm (common practice, no source), so a console that ends at 20 mAs ends half a step of R'10
     * over that, near 15.8 cm.
     */
    @Test
    void a_thick_end_over_the_generator_is_told_with_the_thickness_from_which_answers_are_refused() {
        var room = aHandbookRoom().withGenerator(aConsole("5 10 20", "100 200"));
        var told = findings(room, aDoublingRow());
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(told.get(0).field()).isEqualTo("bandToCm");
        var from = told.get(0).reason().replaceAll("^from ([0-9.]+) cm upwards .*", "$1");
        assertThat(told.get(0).reason()).contains("over the generator's largest, 20 mAs");
        var chart = aChart().with(aDoublingRow());
        var last = String.valueOf(Math.round((Double.parseDouble(from) - 0.1) * 10) / 10.0);
        assertThat(found(room.room(), chart, aQuery().of("KNEE", "ap").ofThickness(last)))
                .isNotNull();
        assertThat(refused(room.room(), chart, aQuery().of("KNEE", "ap").ofThickness(from))
                        .detail())
                .contains("over the generator's largest");
    }

    @Test
    void a_thin_end_under_the_smallest_station_is_told_too() {
        var room = aHandbookRoom().withGenerator(aConsole("10 20 40 80", "100 200"));
        var told = findings(room, aDoublingRow().withBand(0, 14).withReferenceThickness("10"));
        assertThat(told).singleElement().extracting(Finding::field).isEqualTo("bandFromCm");
        assertThat(told.get(0).reason()).contains("cm downwards", "under the generator's smallest, 10 mAs");
    }

    @Test
    void the_attenuation_of_water_is_followed_to_the_end_of_the_band() {
        var room = aHandbookRoom().withGenerator(aConsole("5 10 20 40", "100 200"));
        var told = findings(room, aHandbookRow().withMethod("attenuation").withBand(8, 30));
        assertThat(told).singleElement().extracting(Finding::field).isEqualTo("bandToCm");
    }

    @Test
    void the_longest_time_of_the_row_ends_its_band_as_well() {
        var room = aHandbookRoom().withGenerator(aConsole("5 10 20 40 80", "100"));
        var told = findings(room, aDoublingRow().withLongestTime("150"));
        assertThat(told).singleElement().extracting(Finding::reason).asString().contains("the row allows 150 ms");
    }

    @Test
    void a_band_that_can_be_set_from_end_to_end_is_not_spoken_of_and_neither_is_a_fixed_one() {
        assertThat(findings(aHandbookRoom(), aDoublingRow())).isEmpty();
        assertThat(findings(aRoom(), ChartFixtures.aRow())).isEmpty();
        assertThat(findings(
                        aHandbookRoom().withGenerator(aConsole("5 10 20", "100 200")),
                        aDoublingRow().withMethod("fixed")))
                .isEmpty();
    }
}
