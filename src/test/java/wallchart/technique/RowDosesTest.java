package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartFixtures;
import wallchart.equipment.Chamber;

/** What a row costs as it is written. */
class RowDosesTest {

    private static final RowDoses DOSES = new RowDoses(new ExposureModel(TechniqueFixtures.PHYSICS), List.of());

    /** 75 kV and 25 mAs are stations, so an answer at the reference thickness sets and costs just the same. */
    @Test
    void at_the_reference_thickness_it_is_the_estimate_of_an_answer() {
        var room = aRoom().room();
        var row = ChartFixtures.aRow();
        var answer =
                TechniqueFixtures.found(room, row, TechniqueFixtures.aQuery().of(row.row()));

        var written = DOSES.find(row.row(), Arrangement.find(room, row.row()).orElseThrow());

        assertThat(written.orElseThrow().entrance().micrograys())
                .isCloseTo(answer.dose().orElseThrow().entrance().micrograys(), within(1e-9));
    }

    @Test
    void of_an_aec_row_it_is_an_upper_bound_at_the_back_up() {
        var room = aRoom().room();
        var row = ChartFixtures.aRow()
                .withMethod("fixed")
                .withAec(0, "100", Chamber.LEFT)
                .row();

        var dose = DOSES.find(row, Arrangement.find(room, row).orElseThrow()).orElseThrow();

        assertThat(dose.upperBound()).isTrue();
        assertThat(dose.forMAs().inMilliampereSeconds()).isEqualTo(100);
    }

    @Test
    void where_the_distance_leaves_no_room_for_the_patient_there_is_none() {
        var room = aRoom().room();
        var row = ChartFixtures.aRow().withBand(18, 24).withSid("25").row();

        assertThat(DOSES.find(row, Arrangement.find(room, row).orElseThrow())).isEmpty();
    }
}
