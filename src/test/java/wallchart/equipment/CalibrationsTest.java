package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeFit;

class CalibrationsTest {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();

    private final Calibrations calibrations = new Calibrations(PHYSICS);
    private final Tube tube = aRoom().room().tube();

    @Test
    void a_measured_tube_is_calibrated_at_its_measured_tube_voltages() {
        var calibration = calibrations.find(tube).orElseThrow();
        var output = tube.output().orElseThrow();
        assertThat(calibration.lowest()).isEqualTo(output.lowest());
        assertThat(calibration.highest()).isEqualTo(output.highest());
        assertThat(calibration.statedFiltration()).isEqualTo(output.totalFiltration());
        assertThat(calibration.points()).hasSameSizeAs(output.points());
    }

    @Test
    void a_tube_that_was_never_measured_is_uncalibrated_and_says_what_to_enter() {
        var unmeasured = withOutput(Optional.empty());
        assertThat(calibrations.find(unmeasured)).isEmpty();
        assertThat(calibrations.fit(unmeasured))
                .isEqualTo(new TubeFit.Uncalibrated(
                        "the output of this tube is not measured: enter its output at three tube voltages or more, and a"
                                + " half-value layer. An uncalibrated model errs high: it gives 20 to 35 % more than the mean"
                                + " of a survey of some 40 tubes, so the tube probably gives less",
                        true));
    }

    @Test
    void a_tube_measured_at_two_tube_voltages_is_uncalibrated() {
        var output = tube.output().orElseThrow();
        var two = new MeasuredOutput(
                output.measuredOn(),
                output.totalFiltration(),
                output.halfValueLayerMillimetresAluminium(),
                output.halfValueLayerAt(),
                output.uncertaintyPercent(),
                List.of(output.points().get(0), output.points().get(1)));
        assertThat(calibrations.find(withOutput(Optional.of(two)))).isEmpty();
    }

    @Test
    void a_tube_is_fitted_once_whoever_asks_and_however_many_at_a_time() throws Exception {
        Callable<TubeFit> ask = () -> calibrations.fit(tube);
        var threads = Executors.newFixedThreadPool(8);
        try {
            var answers = new ArrayList<TubeFit>();
            for (var answer : threads.invokeAll(Collections.nCopies(32, ask))) {
                answers.add(answer.get());
            }
            assertThat(answers).allSatisfy(answer -> assertThat(answer).isSameAs(answers.get(0)));
        } finally {
            threads.shutdownNow();
        }
    }

    private Tube withOutput(Optional<MeasuredOutput> output) {
        return new Tube(tube.anodeAngleDegrees(), tube.totalFiltration(), tube.focalSpots(), output);
    }
}
