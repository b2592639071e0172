package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.physics.PhysicsFixtures.ANODE;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.aBeam;
import static wallchart.physics.PhysicsFixtures.relativeError;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * Radiation qualities of IEC 61267:2005: a tube with the filtration that gives the first half-value layer of RQR is filtered further
 * as the quality prescribes, and must have the half-value layer of the quality. Tolerance 4 %, mm Al.
 *
 * <p>Each tube voltage has a base filtration of its own, as in the standard. Half-value layers of RQR and RQT: a national
 * calibration laboratory's list of its qualities (2021) has them to one decimal; the second decimal of RQR, the added filters and all of RQA
 * from memory.
 */
class StandardQualitiesTest {

    private static final double TOLERANCE = 0.04;

    /** First half-value layer of RQR 2 to 10 by tube voltage. */
    private static final Map<Integer, Double> RQR =
            Map.of(40, 1.42, 50, 1.78, 60, 2.19, 70, 2.58, 80, 3.01, 90, 3.48, 100, 3.97, 120, 5.00, 150, 6.57);

    @Validation
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "RQA 2, 40, 4 mm Al, 2.2",
        "RQA 3, 50, 10 mm Al, 3.8",
        "RQA 4, 60, 16 mm Al, 5.4",
        "RQA 5, 70, 21 mm Al, 6.8",
        "RQA 6, 80, 26 mm Al, 8.2",
        "RQA 7, 90, 30 mm Al, 9.2",
        "RQA 8, 100, 34 mm Al, 10.1",
        "RQA 9, 120, 40 mm Al, 11.6",
        "RQA 10, 150, 45 mm Al, 13.3",
        "RQT 8, 100, 0.2 mm Cu, 6.9",
        "RQT 9, 120, 0.25 mm Cu, 8.4",
        "RQT 10, 150, 0.3 mm Cu, 10.1",
    })
    void a_quality_has_the_half_value_layer_of_the_standard(
            String quality, int kilovolts, String added, double halfValueLayer) {
        assertThat(relativeError(halfValueLayer(kilovolts, added), halfValueLayer))
                .isLessThan(TOLERANCE);
    }

    @Test
    void a_tenth_of_a_millimetre_of_copper_too_much_would_be_noticed() {
        assertThat(relativeError(halfValueLayer(120, "0.35 mm Cu"), 8.4)).isGreaterThan(TOLERANCE);
    }

    @Test
    void six_millimetres_of_aluminium_too_much_would_be_noticed() {
        assertThat(relativeError(halfValueLayer(70, "27 mm Al"), 6.8)).isGreaterThan(TOLERANCE);
    }

    @Test
    void one_base_filtration_for_all_tube_voltages_would_not_do() {
        var atForty = base(40);
        assertThat(relativeError(aBeam(150, atForty).halfValueLayerMillimetresAluminium(), RQR.get(150)))
                .isGreaterThan(2 * TOLERANCE);
    }

    private static double halfValueLayer(int kilovolts, String added) {
        return aBeam(kilovolts, base(kilovolts).and(Filtration.parse(added))).halfValueLayerMillimetresAluminium();
    }

    /** The total filtration with which a tube has the half-value layer of RQR. */
    private static Filtration base(int kilovolts) {
        var measured = new TubeMeasurement(
                ANODE, Filtration.NONE, RQR.get(kilovolts), TubeVoltage.kilovolts(kilovolts), List.of());
        var base = new FiltrationFit(PHYSICS, measured, new ArrayList<>()).fit();
        assertThat(relativeError(aBeam(kilovolts, base).halfValueLayerMillimetresAluminium(), RQR.get(kilovolts)))
                .isLessThan(0.003);
        return base;
    }
}
