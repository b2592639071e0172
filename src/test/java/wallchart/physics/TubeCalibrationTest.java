package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.physics.PhysicsFixtures.ANODE;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.aBeam;
import static wallchart.physics.PhysicsFixtures.relativeError;
import static wallchart.physics.TubeFixtures.EIGHTY;
import static wallchart.physics.TubeFixtures.TRUE_FILTRATION;
import static wallchart.physics.TubeFixtures.TRUE_PAIR;
import static wallchart.physics.TubeFixtures.calibrated;
import static wallchart.physics.TubeFixtures.codes;
import static wallchart.physics.TubeFixtures.measured;
import static wallchart.physics.TubeFixtures.questionedKilovolts;
import static wallchart.physics.TubeFixtures.trueHalfValueLayer;
import static wallchart.physics.TubeFixtures.trueOutput;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.Validation;
import wallchart.physics.TubeMeasurement.Point;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

class TubeCalibrationTest {

    private static final int[] FIVE = {50, 65, 80, 100, 120};

    @Test
    void a_planted_filtration_and_output_are_found_again() {
        var calibration = calibrated(kV -> 1, FIVE);
        assertThat(calibration.totalFiltration()).isEqualTo(TRUE_FILTRATION);
        assertThat(calibration.statedFiltration()).isEqualTo(Filtration.aluminium("2.5"));
        assertThat(calibration.pair().factor()).isCloseTo(TRUE_PAIR.factor(), within(1e-9));
        assertThat(calibration.pair().exponent()).isCloseTo(TRUE_PAIR.exponent(), within(1e-9));
        assertThat(calibration.questioned()).isEmpty();
        assertThat(calibration.points())
                .allSatisfy(point -> assertThat(point.residualPercent()).isCloseTo(0, within(1e-9)))
                .allSatisfy(point -> assertThat(point.deviationPercent()).isCloseTo(0, within(1e-9)));
    }

    @Test
    void a_tube_with_copper_in_the_beam_keeps_it_as_stated() {
        var total = new Filtration(
                TRUE_FILTRATION.aluminiumMillimetres(),
                Filtration.parse("0.1 mm Cu").copperMillimetres());
        double halfValueLayer = aBeam(80, total).halfValueLayerMillimetresAluminium();
        var found =
                PHYSICS.calibrate(measured(Filtration.parse("2.5 mm Al + 0.1 mm Cu"), halfValueLayer, kV -> 1, FIVE));
        assertThat(((TubeCalibration) found).totalFiltration()).isEqualTo(total);
    }

    /** The model's own pair 1.063 and 0.054 belongs to the published constants of its spectrum; a tube's pair multiplies it. */
    @Test
    void the_absolute_pair_has_the_models_own_one_in_it() {
        var pair = calibrated(kV -> 1, FIVE).pair();
        assertThat(pair.absoluteFactor()).isCloseTo(1.063 * 0.82, within(1e-9));
        assertThat(pair.absoluteExponent()).isCloseTo(0.054 - 0.06, within(1e-9));
    }

    /** 3 % is what a careful measurement reproduces to; 5 % is what is promised within the measured tube voltages. */
    @Property(tries = 300)
    void with_three_percent_of_noise_it_holds_to_five_percent_within_what_was_measured(
            @ForAll @Size(5) List<@DoubleRange(min = -0.03, max = 0.03) Double> noise,
            @ForAll @DoubleRange(min = 50, max = 120) double kilovolts) {
        var left = new ArrayList<>(noise);
        var calibration = calibrated(kV -> 1 + left.remove(0), FIVE);
        double kV = Math.round(kilovolts * 10) / 10.0;
        double output = calibration.outputFactor(kV)
                * aBeam(kV, calibration.totalFiltration()).outputMicroGyPerMAs();
        assertThat(calibration.covers(kV)).isTrue();
        assertThat(relativeError(output, trueOutput(kV))).isLessThan(0.05);
    }

    @ParameterizedTest
    @ValueSource(ints = {50, 65, 80, 100, 120})
    void a_point_twenty_percent_off_is_questioned_wherever_it_stands(int wrong) {
        for (double error : new double[] {1.2, 0.8}) {
            var calibration = calibrated(kV -> kV == wrong ? error : 1, FIVE);
            assertThat(questionedKilovolts(calibration)).contains(wrong + " kV");
            var point = calibration.questioned().stream()
                    .filter(questioned -> questioned.kV().equals(TubeVoltage.kilovolts(wrong)))
                    .findFirst()
                    .orElseThrow();
            assertThat(point.deviationPercent()).isCloseTo((error - 1) * 100, within(1e-6));
        }
    }

    /** Why each point is held against the fit of the others: the fit through all three follows the wrong end. */
    @Test
    void of_three_points_a_wrong_end_hides_from_its_residual_and_not_from_its_deviation() {
        var calibration = calibrated(kV -> kV == 100 ? 1.2 : 1, 60, 80, 100);
        var end = calibration.points().get(2);
        assertThat(end.residualPercent()).isBetween(2.0, CalibratedPoint.QUESTIONED_ABOVE_PERCENT);
        assertThat(end.deviationPercent()).isCloseTo(20, within(1e-6));
        assertThat(end.questioned()).isTrue();
        assertThat(calibration.sentences(Set.of()))
                .contains("three tube voltages do not tell which of them is off: measure all three again, or a fourth");
    }

    @Test
    void a_questioned_point_is_said_in_figures_with_what_to_do() {
        var calibration = calibrated(kV -> kV == 80 ? 1.18 : 1, FIVE);
        var finding = "80 kV: " + Math.round(trueOutput(80) * 1.18 * 100) / 100.0
                + " uGy/mAs is 18 % over the fit of the others, which fit within 10 % without it";
        assertThat(calibration.sentences(Set.of())).startsWith(finding + ": measure again, or confirm");
        assertThat(calibration.sentences(Set.of("output-at-80"))).startsWith(finding + ": confirmed");
    }

    @ParameterizedTest
    @CsvSource({"1.09, 0", "0.91, 0", "1.12, 1", "0.88, 1"})
    void ten_percent_from_the_others_is_where_questions_begin(double error, int questioned) {
        assertThat(calibrated(kV -> kV == 80 ? error : 1, 40, 50, 80, 130, 150).questioned())
                .hasSize(questioned);
    }

    @Test
    void two_tube_voltages_do_not_calibrate_and_the_reason_says_what_would() {
        assertThat(PHYSICS.calibrate(measured(kV -> 1, 60, 100)))
                .isEqualTo(new TubeFit.Uncalibrated(
                        "the output is measured at 60 kV and 100 kV within 40 to 150 kV: fitting"
                                + " the model to the tube needs 3 tube voltages or more; measure the output at others too",
                        true));
    }

    @Test
    void a_point_outside_the_model_is_left_out_and_named() {
        var points = new ArrayList<>(measured(kV -> 1, 60, 80, 100).points());
        points.add(0, new Point(TubeVoltage.kilovolts(35), 7));
        var calibration = (TubeCalibration)
                PHYSICS.calibrate(new TubeMeasurement(ANODE, TRUE_FILTRATION, trueHalfValueLayer(), EIGHTY, points));
        assertThat(calibration.lowest()).isEqualTo(TubeVoltage.kilovolts(60));
        assertThat(calibration.sentences(Set.of()))
                .anyMatch(
                        sentence -> sentence.startsWith("the point at 35 kV is not fitted: the tube voltage is 35 kV"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 12})
    void a_half_value_layer_that_no_aluminium_gives_keeps_the_stated_filtration_and_says_so(double halfValueLayer) {
        var stated = Filtration.aluminium("2.5");
        var calibration = (TubeCalibration) PHYSICS.calibrate(measured(stated, halfValueLayer, kV -> 1, FIVE));
        assertThat(calibration.totalFiltration()).isEqualTo(stated);
        assertThat(codes(calibration)).contains("half-value-layer");
        assertThat(calibration.sentences(Set.of())).anySatisfy(sentence -> assertThat(sentence)
                .contains("outside the model's 1.5 to 60 mm Al")
                .contains("stays as stated, 2.5 mm Al"));
    }

    @Test
    void a_half_value_layer_at_a_tube_voltage_outside_the_model_keeps_the_stated_filtration() {
        var sound = measured(kV -> 1, FIVE);
        var calibration = (TubeCalibration) PHYSICS.calibrate(
                new TubeMeasurement(ANODE, sound.statedFiltration(), 0.5, TubeVoltage.kilovolts(30), sound.points()));
        assertThat(calibration.totalFiltration()).isEqualTo(sound.statedFiltration());
        assertThat(calibration.sentences(Set.of()).get(0)).contains("the tube voltage is 30 kV");
    }

    @ParameterizedTest
    @CsvSource({"2.5 mm Al, 3.27 mm Al", "4.5 mm Al + 0.1 mm Cu, 5.27 mm Al + 0.1 mm Cu"})
    void what_the_half_value_layer_adds_is_added_to_every_filtration_of_the_tube(String stated, String corrected) {
        assertThat(calibrated(kV -> 1, FIVE).corrected(Filtration.parse(stated)))
                .isEqualTo(Filtration.parse(corrected));
    }

    @Test
    void a_corrected_filtration_that_the_model_does_not_take_is_said_and_not_made_to_fit() {
        var overstated = measured(Filtration.aluminium("6"), trueHalfValueLayer(), kV -> 1, FIVE);
        var calibration = (TubeCalibration) PHYSICS.calibrate(overstated);
        assertThat(calibration.corrected(Filtration.aluminium("6"))).isEqualTo(TRUE_FILTRATION);
        assertThat(calibration.corrected(Filtration.aluminium("3"))).isEqualTo(Filtration.aluminium("0.27"));
        assertThat(calibration.corrected(Filtration.aluminium("2"))).isEqualTo(Filtration.NONE);
        assertThat(PHYSICS.findObjection(EIGHTY, ANODE, calibration.corrected(Filtration.aluminium("3"))))
                .contains("the total filtration is 0.27 mm Al: the beam model holds from 1.5 to 60 mm Al;"
                        + " use measured values instead");
    }

    /**
     * A medical-physics survey of about 40 radiographic units (2015): mean output 0.008373 kV^1.983 uGy/mAs at 40 in. The survey
     * states neither filtration nor half-value layer: 3 mm Al is assumed, and its half-value layer in the model taken for measured.
     * From 60 to 100 kV the calibrated model gives the survey's exponent within 0.02 and 51.3 uGy/mAs at 80 kV and 1 m within 2 %.
     * Over a wider span no single power of the tube voltage fits: below 60 kV output grows faster, above 100 kV slower.
     */
    @Validation
    @Test
    void fitted_to_a_survey_the_model_gives_the_outputs_and_the_exponent_of_the_survey() {
        var points = List.of(60, 70, 80, 90, 100).stream()
                .map(kV -> new Point(TubeVoltage.kilovolts(kV), 0.008373 * Math.pow(kV, 1.983) * 1.016 * 1.016))
                .toList();
        double halfValueLayer = aBeam(80).halfValueLayerMillimetresAluminium();
        var calibration = (TubeCalibration) PHYSICS.calibrate(
                new TubeMeasurement(ANODE, Filtration.aluminium("3"), halfValueLayer, EIGHTY, points));
        assertThat(calibration.questioned()).isEmpty();
        assertThat(output(calibration, 80)).isCloseTo(51.3, within(1.0));
        double exponent = Math.log(output(calibration, 100) / output(calibration, 60)) / Math.log(100 / 60.0);
        assertThat(exponent).isCloseTo(1.983, within(0.02));
        assertThat(calibration.pair().factor()).isBetween(0.7, 0.9);
    }

    private static double output(TubeCalibration calibration, double kV) {
        return calibration.outputFactor(kV)
                * aBeam(kV, calibration.totalFiltration()).outputMicroGyPerMAs();
    }
}
