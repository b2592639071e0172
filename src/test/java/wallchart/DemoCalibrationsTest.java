package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wallchart.equipment.Calibrations;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeCalibration;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** The measured tubes of the demo department, as the beam model takes them. */
class DemoCalibrationsTest {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();
    private static final Calibrations CALIBRATIONS = new Calibrations(PHYSICS);
    private static final Map<String, Room> ROOMS =
            DemoRoom.all().stream().map(DemoRoom::room).collect(Collectors.toMap(Room::id, Function.identity()));

    @Test
    void the_measured_tubes_are_calibrated_and_nothing_is_questioned() {
        for (var room : List.of("r1", "r2")) {
            assertThat(calibration(room).questions()).as(room).isEmpty();
        }
    }

    @Test
    void the_older_tube_is_filtered_less_than_its_paper_states_and_says_which_minimum_it_meets() {
        var calibration = calibration("r2");
        assertThat(calibration.totalFiltration().aluminiumMillimetres())
                .isLessThan(calibration.statedFiltration().aluminiumMillimetres());
        assertThat(calibration.sentences(Set.of()))
                .last()
                .asString()
                .startsWith(
                        "the half-value layer of 2.8 mm Al at 80 kV meets the minimum of 21 CFR 1020.30(m) of 2.3 mm Al");
    }

    @Test
    void the_tube_that_was_never_measured_is_uncalibrated() {
        assertThat(CALIBRATIONS.find(ROOMS.get("r3").tube())).isEmpty();
    }

    /** The first room is measured up to 140 kV: the output once fell from 128.0 there to 127.4 uGy/mAs at 141 kV. */
    @Test
    void the_output_rises_with_every_kilovolt_beyond_what_was_measured_too() {
        var model = new ExposureModel(PHYSICS);
        for (var demo : DemoRoom.all()) {
            var row = demo.versions().get(0).content().rows().get(0);
            var how = Arrangement.find(demo.room(), row).orElseThrow();
            for (int kV = 41; kV <= 150; kV++) {
                assertThat(model.outputPerMAs(how, kV))
                        .as(demo.room().id() + " at " + kV + " kV")
                        .isGreaterThan(model.outputPerMAs(how, kV - 1));
            }
        }
    }

    private static TubeCalibration calibration(String room) {
        return CALIBRATIONS.find(ROOMS.get(room).tube()).orElseThrow();
    }
}
