package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wallchart.grading.GradingFixtures.CHECK;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.anHonestRow;
import static wallchart.grading.GradingFixtures.chart;
import static wallchart.grading.GradingFixtures.checked;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.Band;
import wallchart.chart.ChartContent;
import wallchart.chart.RowFields;
import wallchart.equipment.Chamber;
import wallchart.equipment.SupportKind;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.PartThickness;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureArithmetic;

/** What is predicted along a band, over what, and where nothing is. */
class CurvesTest {

    @Test
    void a_band_is_looked_at_every_half_centimetre_and_a_caliper_reading_inside_its_ends() {
        assertThat(thicknesses("18", "20", "19")).containsExactly(1800L, 1810L, 1850L, 1900L, 1950L, 1990L);
        assertThat(thicknesses("2.25", "3.05", "2.65")).containsExactly(225L, 235L, 250L, 265L, 295L, 300L);
        assertThat(thicknesses("4", "4.05", "4.05")).containsExactly(400L);
        assertThat(thicknesses("59", "9999999999", "59")).containsExactly(5900L, 5910L, 5950L, 999999999890L);
    }

    private static List<Long> thicknesses(String from, String to, String reference) {
        return RowCurve.thicknesses(Band.centimetres(from, to), PartThickness.centimetres(reference));
    }

    @Test
    void a_target_exposure_index_of_nought_is_a_sentence_not_a_division() {
        assertThat(checked(aRow(18, 24).withTargetExposureIndex(0))
                        .rows()
                        .get(0)
                        .notPredicted())
                .extracting(Unpredicted::reason)
                .containsExactly("the target exposure index is 0");
    }

    @Test
    void nought_decibels_are_the_row_nearest_the_middle_of_the_examination() {
        var checked = checked(anHonestRow(12, 18), anHonestRow(18, 24), anHonestRow(24, 30));

        assertThat(checked.reference().orElseThrow().row().band()).isEqualTo(Band.centimetres("18", "24"));
        assertThat(checked.reference().orElseThrow().thicknessCm()).isEqualTo(21);
        assertThat(checked.rows().get(1).curve())
                .filteredOn(point -> point.thicknessCm() == 21)
                .extracting(CurvePoint::decibels)
                .containsExactly(0.0);
    }

    /** What the receptor gets is signal per mAs times mAs, over that of the reference; worked out here by hand. */
    @Test
    void a_point_is_the_models_own_signal_with_what_the_row_sets_there() {
        var row = aRow(18, 24).withKV("70").withMethod("kv-per-cm", "3").withMAs("25");
        var how = Arrangement.find(ROOM, row.row()).orElseThrow();

        var point = checked(row).rows().get(0).curve().stream()
                .filter(at -> at.thicknessCm() == 23)
                .findFirst()
                .orElseThrow();

        double ratio =
                GradingFixtures.MODEL.signalPerMAs(how, 76, 23) / GradingFixtures.MODEL.signalPerMAs(how, 70, 21);
        assertThat(point.kV()).isEqualTo(76);
        assertThat(point.mAs()).isEqualTo(25);
        assertThat(point.decibels()).isCloseTo(ExposureArithmetic.decibels(ratio), within(0.001));
    }

    @Test
    void a_kv_window_moves_the_mas_as_an_answer_does() {
        var row = aRow(18, 24)
                .withKV("80")
                .withMethod("kv-per-cm", "2")
                .withKVWindow("76", "82")
                .withMAs("20");

        var last = checked(row).rows().get(0).curve().stream()
                .filter(at -> at.thicknessCm() == 23)
                .findFirst()
                .orElseThrow();

        assertThat(last.kV()).isEqualTo(82);
        assertThat(last.mAs()).isCloseTo(20 * ExposureArithmetic.voltageFactor(84, 82), within(1e-9));
    }

    @Test
    void beyond_the_model_there_is_a_sentence_and_no_number() {
        var row = checked(aRow(30, 40).withMethod("mas-per-cm")).rows().get(0);

        assertThat(row.curve())
                .allSatisfy(point -> assertThat(point.thicknessCm()).isLessThanOrEqualTo(36));
        assertThat(row.notPredicted()).hasSize(1);
        assertThat(row.notPredicted().get(0).fromCm()).isEqualTo(36.5);
        assertThat(row.notPredicted().get(0).toCm()).isEqualTo(39.9);
        assertThat(row.notPredicted().get(0).reason()).contains("the beam model holds from 0 to 36 cm");
    }

    @Test
    void where_no_row_can_be_predicted_there_is_no_reference_and_every_row_says_why() {
        var thick = checked(aRow(36, 44).withMethod("fixed"));

        assertThat(thick.reference()).isEmpty();
        assertThat(thick.rows().get(0).curve()).isEmpty();
        assertThat(thick.rows().get(0).notPredicted())
                .extracting(Unpredicted::reason)
                .allSatisfy(reason -> assertThat(reason).contains("the beam model holds"));
        assertThat(thick.rows().get(0).grades())
                .allSatisfy(grade -> assertThat(grade.verdict()).isEqualTo(Verdict.NOT_PREDICTED));
    }

    @Test
    void a_row_that_aec_ends_is_not_predicted_and_costs_at_most_its_back_up() {
        var rows = checked(anHonestRow(18, 24), aRow(24, 30).withMethod("fixed").withAec(0, "125", Chamber.LEFT))
                .rows();

        assertThat(rows.get(1).curve()).isEmpty();
        assertThat(rows.get(1).notPredicted())
                .containsExactly(new Unpredicted(24, 30, "AEC ends the exposure: not predicted"));
        assertThat(rows.get(1).dose().orElseThrow().upperBound()).isTrue();
        assertThat(rows.get(0).dose().orElseThrow().upperBound()).isFalse();
    }

    @Test
    void a_row_that_names_what_the_room_has_not_is_not_predicted() {
        var rows = checked(anHonestRow(18, 24), aRow(24, 30).withGrid("g99")).rows();

        assertThat(rows.get(1).notPredicted())
                .extracting(Unpredicted::reason)
                .containsExactly("the room does not have all that the row names");
        assertThat(rows.get(1).dose()).isEmpty();
    }

    @Test
    void a_miswritten_rate_leads_to_a_sentence_not_to_infinity() {
        for (var rate : List.of("0.01", "20")) {
            var row = aRow(10, 60).withReferenceThickness("10").withMethod("mas-per-cm", rate);
            assertThat(checked(row).rows().get(0).curve())
                    .allSatisfy(point -> assertThat(point.decibels()).isFinite());
        }
        var dropping = aRow(10, 35).withReferenceThickness("35").withKV("60").withMethod("kv-per-cm", "10");
        assertThat(checked(dropping).rows().get(0).notPredicted())
                .extracting(Unpredicted::reason)
                .contains("the thickness method arrives at a kV or mAs that no console has");
    }

    /** Twice the target exposure index asks for twice the exposure: no jump, though the mAs doubles. */
    @Test
    void rows_are_compared_over_their_own_target_exposure_index() {
        var lower = anHonestRow(12, 18).withTargetExposureIndex(200);
        var mAs = new BigDecimal(RowFields.of(anHonestRow(18, 24).row()).get("mAs"));
        var doubled = anHonestRow(18, 24)
                .withMAs(mAs.multiply(BigDecimal.valueOf(2)).toPlainString())
                .withTargetExposureIndex(400);

        assertThat(checked(lower, doubled).findings()).isEmpty();
        assertThat(checked(lower, doubled).comparedAs())
                .isEqualTo(
                        "energy absorbed in a caesium iodide panel, over each row's own target exposure index (200, 400)");
        assertThat(checked(lower, doubled.copy().withTargetExposureIndex(200)).find(Kind.JUMP))
                .isPresent();
    }

    @Test
    void receptors_of_different_kinds_are_compared_by_the_air_kerma_that_reaches_them() {
        var panel = aRow(4, 6)
                .at(SupportKind.TABLETOP)
                .withGrid("none")
                .withKV("55")
                .withMAs("3.2")
                .withSid("100");
        var plate = panel.copy().withBand(6, 8).withReceptor("cr1", "18x24");

        assertThat(checked(panel, plate).quantity()).isEqualTo(ReceptorResponse.AIR_KERMA);
        assertThat(checked(panel, plate).comparedAs()).contains("because the rows' receptors are of different kinds");
        assertThat(checked(panel).quantity()).isEqualTo(ReceptorResponse.CESIUM_IODIDE);
        assertThat(checked(plate).comparedAs()).isEqualTo("air kerma at the receptor");
    }

    @Test
    void a_gap_between_bands_is_no_jump() {
        assertThat(checked(anHonestRow(12, 18), anHonestRow(20, 24).withMAs("100"))
                        .find(Kind.JUMP))
                .isEmpty();
    }

    @Test
    void bands_that_overlap_are_survived() {
        assertThat(checked(anHonestRow(12, 19), anHonestRow(18, 24), anHonestRow(18, 24))
                        .rows())
                .hasSize(3);
    }

    @Test
    void an_empty_chart_has_nothing_to_say() {
        assertThat(CHECK.check(ROOM, ChartContent.EMPTY).examinations()).isEmpty();
    }

    @Test
    void only_the_examinations_asked_for_are_checked() {
        var content = chart(anHonestRow(18, 24), aRow(10, 13).of("KNEE", "ap"));

        assertThat(CHECK.check(ROOM, content, key -> key.bodyPart().equals("KNEE"))
                        .examinations())
                .extracting(examination -> examination.examination().bodyPart())
                .containsExactly("KNEE");
    }

    @Test
    void limits_that_are_none_are_refused() {
        assertThatThrownBy(() -> new PhysicsLimits(0, 0.5))
                .hasMessageContaining("largest jump between bands is 0.0 dB");
        assertThatThrownBy(() -> new PhysicsLimits(1, 5.1)).hasMessageContaining("at most 5");
        assertThatThrownBy(() -> new PhysicsLimits(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_a_prediction_holds_for_is_said_with_it() {
        assertThat(CHECK.check(ROOM, chart(anHonestRow(18, 24))).holds())
                .anySatisfy(sentence -> assertThat(sentence).contains("slab of water", "no bone, no lung"))
                .anySatisfy(sentence -> assertThat(sentence).contains("40 to 150 kV, 1.5 mm Al or more"))
                .anySatisfy(sentence -> assertThat(sentence).contains("0.54 dB off"))
                .noneSatisfy(sentence -> assertThat(sentence).contains("no measured output"));
        assertThat(CHECK.check(GradingFixtures.UNCALIBRATED, chart(anHonestRow(18, 24)))
                        .holds())
                .anySatisfy(sentence -> assertThat(sentence).contains("no measured output"));
    }
}
