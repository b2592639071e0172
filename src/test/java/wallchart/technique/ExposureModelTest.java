package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.anOutput;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.PHYSICS;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;
import wallchart.physics.GridModel;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * A tube whose paper states 2.5 mm Al and whose beam has 4, and which gives 0.8 of what the model says: measured at 60 to 120 kV,
 * its exposures are predicted as they truly are.
 */
class ExposureModelTest {

    private static final Filtration TRUE_FILTRATION = Filtration.aluminium("4");
    private static final double TRUE_FACTOR = 0.8;
    private static final double BEHIND = 20;

    private final ExposureModel model = new ExposureModel(PHYSICS);

    @ParameterizedTest
    @ValueSource(ints = {50, 60, 70, 100, 120, 140})
    void a_measured_tube_is_predicted_as_it_truly_is(int kilovolts) {
        var how = arrangement(measuredRoom(60, 80, 100, 120));
        assertThat(model.signalPerMAs(how, kilovolts, BEHIND) / trueSignal(how, kilovolts))
                .isCloseTo(1, within(0.02));
        assertThat(model.outputPerMAs(how, kilovolts) / trueOutput(kilovolts)).isCloseTo(1, within(0.02));
        assertThat(model.backscatterFactor(how, kilovolts, BEHIND) / trueBackscatter(how, kilovolts))
                .isCloseTo(1, within(0.001));
    }

    /** What measuring is good for: by paper the output is half as high again, and the beam less penetrating. */
    @Test
    void the_same_tube_unmeasured_is_predicted_by_its_paper() {
        var how = arrangement(room(null));
        assertThat(model.outputPerMAs(how, 80) / trueOutput(80)).isGreaterThan(1.5);
        double hardening = model.signalPerMAs(how, 80, BEHIND) / model.outputPerMAs(how, 80);
        assertThat(hardening).isLessThan(0.85 * trueSignal(how, 80) / trueOutput(80));
    }

    @Test
    void where_measurement_ends_and_the_fit_begins_there_is_no_step_for_a_consistent_tube() {
        var how = arrangement(measuredRoom(60, 80, 100, 120));
        assertThat(model.outputPerMAs(how, 120.1) / model.outputPerMAs(how, 120))
                .isCloseTo(1.001, within(0.005));
        assertThat(model.outputSource(how, 120)).isEqualTo("measured 2026-01-14");
        assertThat(model.outputSource(how, 120.1))
                .isEqualTo("calibrated beam model beyond 60 kV to 120 kV, measured 2026-01-14");
    }

    @Test
    void a_filter_is_added_to_what_is_truly_in_the_beam() {
        var room = measuredRoom(60, 80, 100, 120);
        var copper = Filtration.parse("0.1 mm Cu");
        var filtered = Arrangement.find(room, aRow().with(copper).row()).orElseThrow();
        double through = model.outputPerMAs(filtered, 80) / model.outputPerMAs(arrangement(room), 80);
        double truly = beamOutput(80, TRUE_FILTRATION.and(copper)) / beamOutput(80, TRUE_FILTRATION);
        double byPaper =
                beamOutput(80, Filtration.aluminium("2.5").and(copper)) / beamOutput(80, Filtration.aluminium("2.5"));
        assertThat(through).isCloseTo(truly, within(0.002));
        assertThat(through / byPaper).isGreaterThan(1.05);
    }

    private static double trueOutput(int kilovolts) {
        return TRUE_FACTOR * beamOutput(kilovolts, TRUE_FILTRATION);
    }

    private static double beamOutput(int kilovolts, Filtration total) {
        return PHYSICS.beam(TubeVoltage.kilovolts(kilovolts), 12, total).outputMicroGyPerMAs();
    }

    private static double trueSignal(Arrangement how, int kilovolts) {
        var signal = PHYSICS.receptorSignal(
                12, TRUE_FILTRATION, GridModel.nearest(10), how.field(), ReceptorResponse.CESIUM_IODIDE);
        return TRUE_FACTOR
                * signal.perMAs(kilovolts, BEHIND)
                * Math.pow(100 / how.sid().inCentimetres(), 2);
    }

    private static double trueBackscatter(Arrangement how, int kilovolts) {
        double focusSkin = how.focusSkinCentimetres(BEHIND);
        return PHYSICS.beam(TubeVoltage.kilovolts(kilovolts), 12, TRUE_FILTRATION)
                .backscatterFactor(how.fieldDiameterAtSkin(focusSkin), focusSkin);
    }

    private static Arrangement arrangement(Room room) {
        return Arrangement.find(room, aRow().row()).orElseThrow();
    }

    private static Room measuredRoom(int... kilovolts) {
        var points = Arrays.stream(kilovolts)
                .mapToObj(kV -> new OutputPointPart(BigDecimal.valueOf(kV), rounded(trueOutput(kV))))
                .toList();
        double halfValueLayer =
                PHYSICS.beam(TubeVoltage.kilovolts(80), 12, TRUE_FILTRATION).halfValueLayerMillimetresAluminium();
        var measured = anOutput();
        return room(new OutputPart(
                measured.measuredOn(),
                number("2.5"),
                null,
                rounded(halfValueLayer),
                number("80"),
                measured.uncertaintyPercent(),
                List.copyOf(points)));
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(Math.round(value * 100), 2);
    }

    private static Room room(OutputPart output) {
        var tube = aTube();
        return aRoom().withTube(new TubePart(tube.anodeAngleDeg(), number("2.5"), null, tube.focalSpots(), output))
                .room();
    }
}
