package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.anOutputAt;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.PHYSICS;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;
import wallchart.quantity.Filtration;

/** What is said where a tube was measured, beyond that, and where nobody measured it; the outputs are those of an invented tube. */
class BeyondTheMeasurementTest {

    private final ExposureModel model = new ExposureModel(PHYSICS);

    /** Its last point lies 6 % over the course of the others. */
    private static final Room HIGH_AT_THE_END = aRoom().withOutput(
                    anOutputAt("2026-01-14", "60 26.1", "80 48.2", "100 73.5", "120 106"))
            .room();

    /** Its first point lies 6 % under it. */
    private static final Room LOW_AT_THE_START = aRoom().withOutput(
                    anOutputAt("2026-01-14", "60 24.5", "80 48.2", "100 73.5", "120 100.2"))
            .room();

    private static Arrangement arrangement(Room room) {
        return Arrangement.find(room, aRow().row()).orElseThrow();
    }

    @Test
    void where_the_measurement_ends_the_output_does_not_step() {
        for (var room : new Room[] {HIGH_AT_THE_END, LOW_AT_THE_START}) {
            var how = arrangement(room);
            double[] outputs = IntStream.rangeClosed(50, 149)
                    .mapToDouble(kV -> model.outputPerMAs(how, kV))
                    .toArray();
            for (int i = 1; i < outputs.length; i++) {
                assertThat(outputs[i] / outputs[i - 1])
                        .as(room + " at " + (50 + i) + " kV")
                        .isBetween(1.003, 1.06);
            }
            assertThat(model.outputPerMAs(how, 120.1) / model.outputPerMAs(how, 120))
                    .isBetween(1.0005, 1.003);
            assertThat(model.outputPerMAs(how, 60) / model.outputPerMAs(how, 59.9))
                    .isBetween(1.0005, 1.006);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {59, 59.5, 60, 60.4, 119.5, 120, 120.5, 121, 133.3})
    void short_cut_and_answer_agree_at_the_ends_of_the_measurement(double kilovolts) {
        var how = arrangement(HIGH_AT_THE_END);
        double shortCut = new ArrangedBeam(model, how, how.response()).signalPerMAs(kilovolts, 20);
        assertThat(shortCut / model.signalPerMAs(how, kilovolts, 20)).isCloseTo(1, within(0.002));
    }

    /** 8 % as measured and 13 % of the method (Compagnone et al. 2005), with 10 % beyond the measured kV and 5 % behind a filter. */
    @Test
    void the_uncertainty_widens_beyond_what_was_measured() {
        var measured = arrangement(HIGH_AT_THE_END);
        var room = HIGH_AT_THE_END;
        var filtered = Arrangement.find(
                        room, aRow().with(Filtration.parse("0.1 mm Cu")).row())
                .orElseThrow();
        assertThat(model.uncertaintyPercent(measured, 100)).isEqualTo(15); // sqrt(8^2 + 13^2) = 15.3
        assertThat(model.uncertaintyPercent(measured, 121)).isEqualTo(18); // sqrt(8^2 + 10^2 + 13^2) = 18.2
        assertThat(model.uncertaintyPercent(filtered, 100)).isEqualTo(16); // sqrt(8^2 + 5^2 + 13^2) = 16.1
        assertThat(model.uncertaintyPercent(filtered, 121)).isEqualTo(19); // sqrt(8^2 + 10^2 + 5^2 + 13^2) = 18.9
    }

    /** 30 % of the output and 13 % of the method; and two points that are extended are less sure than a fit. */
    @Test
    void without_a_fit_it_is_wider_still() {
        var uncalibrated = arrangement(aRoom().uncalibrated().room());
        assertThat(model.uncertaintyPercent(uncalibrated, 80)).isEqualTo(33); // sqrt(30^2 + 13^2) = 32.7
        assertThat(model.outputSource(uncalibrated, 80)).isEqualTo("beam model, uncalibrated, +-30 %");
        var extended = arrangement(aRoom().withOutput(anOutputAt("2026-01-14", "60 26.1", "80 48.2"))
                .room());
        assertThat(model.uncertaintyPercent(extended, 81)).isEqualTo(25); // sqrt(8^2 + 20^2 + 13^2) = 25.2
    }

    @Test
    void a_beam_that_the_half_value_layer_leaves_too_little_metal_is_not_predicted() {
        var steady = anOutputAt("2026-01-14", "60 26.1", "80 48.2", "100 73.5", "120 100.2");
        var measured = new OutputPart(
                steady.measuredOn(),
                number("4.0"),
                null,
                number("2.6"), // some 2 mm Al: 2 mm less than stated
                number("80"),
                steady.uncertaintyPercent(),
                steady.microGyPerMAsAtOneMetre());
        var tube = aTube();
        var room = aRoom().withTube(
                        new TubePart(tube.anodeAngleDeg(), number("3.0"), null, tube.focalSpots(), measured))
                .room();
        assertThat(model.findObjection(arrangement(room), 80, 20).orElseThrow())
                .startsWith("the total filtration is 1")
                .contains("the beam model holds from 1.5 to 60 mm Al")
                .endsWith("(3 mm Al on paper, brought to the measured half-value layer)");
    }
}
