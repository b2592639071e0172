package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.chart.BodyParts;
import wallchart.chart.ExaminationKey;
import wallchart.chart.RowBuilder;
import wallchart.equipment.SupportKind;
import wallchart.physics.BeamPhysics;

/** Which examinations no slab of water stands for. */
class MostlyLungTest {

    private static ExaminationKey examination(String bodyPart, String projection) {
        return new ExaminationKey(bodyPart, projection, "adult", SupportKind.WALL_BUCKY);
    }

    @ParameterizedTest
    @CsvSource({
        "CHEST, pa",
        "CHEST, ap",
        "CHEST, lateral",
        "CHEST, decubitus",
        "RIB, ap",
        "STERNUM, rao",
        "CHESTABDOMEN, ap"
    })
    void chests_and_what_lies_across_the_lungs_are_not_predicted_as_water(String bodyPart, String projection) {
        assertThat(MostlyLung.findObjection(examination(bodyPart, projection)))
                .hasValueSatisfying(sentence ->
                        assertThat(sentence).startsWith("mostly lung: a slab of water does not stand for it"));
    }

    @ParameterizedTest
    @CsvSource({
        "TSPINE, lateral",
        "TSPINE, ap",
        "ABDOMEN, ap",
        "CLAVICLE, ap",
        "SCAPULA, ap",
        "SHOULDER, ap",
        "HAND, pa"
    })
    void spine_shoulder_trunk_and_limbs_are(String bodyPart, String projection) {
        assertThat(MostlyLung.findObjection(examination(bodyPart, projection))).isEmpty();
    }

    /** What two rows of a chest do to the receptor, too, is not held against each other behind water. */
    @Test
    void a_chest_row_is_predicted_at_the_skin_and_nowhere_behind() {
        var chest = predicted(aRow().of("CHEST", "ap"));
        var spine = predicted(aRow());

        assertThat(chest.behind()).isEmpty();
        assertThat(spine.behind()).isPresent();
        assertThat(chest.entrance()).isEqualTo(spine.entrance());
        assertThat(chest.findModelledDecibelsFrom(chest)).isEmpty();
    }

    private static Prediction predicted(RowBuilder row) {
        return new Predictions(BeamPhysics.load())
                .find(aRoom().room(), row.row(), row.row().referenceThickness(), Optional.empty())
                .orElseThrow();
    }

    @Test
    void every_term_is_one_that_a_chart_may_name() {
        assertThat(MostlyLung.terms())
                .allSatisfy(term -> assertThat(BodyParts.find(term)).isPresent());
    }
}
