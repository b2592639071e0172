package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.physics.GridModel.NONE;
import static wallchart.physics.GridModel.R10;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.relativeError;
import static wallchart.physics.ReceptorResponse.AIR_KERMA;
import static wallchart.physics.ReceptorResponse.CESIUM_IODIDE;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.Regression;
import wallchart.physics.PhysicsFixtures.Row;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** Output, half-value layers and receptor signals of 13 beams against the reference implementation: golden_values.csv. */
class GoldenValuesTest {

    private static final double TOLERANCE = 1e-4;
    /** As the file's head gives it for a field of 30x30 cm. */
    private static final double FIELD_RADIUS_CM = 16.93;

    static List<Row> beams() {
        return PhysicsFixtures.rows("golden_values.csv");
    }

    @Regression
    @ParameterizedTest
    @MethodSource("beams")
    void beam_quality_agrees_with_the_reference_implementation(Row golden) {
        var beam = PHYSICS.beam(tubeVoltage(golden), golden.number("anode_deg"), filtration(golden));
        agrees(beam.outputMicroGyPerMAs(), golden, "out");
        agrees(beam.halfValueLayerMillimetresAluminium(), golden, "HVL1");
        agrees(beam.secondHalfValueLayerMillimetresAluminium(), golden, "HVL2");
        agrees(beam.meanEnergyKiloelectronvolts(), golden, "mean");
    }

    @Regression
    @ParameterizedTest
    @MethodSource("beams")
    void receptor_signal_agrees_with_the_reference_implementation(Row golden) {
        agrees(signal(golden, NONE, AIR_KERMA, 20), golden, "air_20_n");
        agrees(signal(golden, NONE, CESIUM_IODIDE, 10), golden, "csi_10_n");
        agrees(signal(golden, NONE, CESIUM_IODIDE, 20), golden, "csi_20_n");
        agrees(signal(golden, R10, CESIUM_IODIDE, 10), golden, "csi_10_g");
        agrees(signal(golden, R10, CESIUM_IODIDE, 20), golden, "csi_20_g");
        agrees(signal(golden, R10, CESIUM_IODIDE, 30), golden, "csi_30_g");
    }

    @Regression
    @ParameterizedTest
    @MethodSource("beams")
    void primary_air_kerma_behind_water_agrees_with_the_reference_implementation(Row golden) {
        var tables = PHYSICS.tables();
        var behindWater = PHYSICS.fluence(golden.number("kV"), golden.number("anode_deg"))
                .times(tables.transmission(filtration(golden)))
                .times(tables.perCentimetre(Material.WATER).transmission(20));
        agrees(behindWater.weightedBy(tables.response(AIR_KERMA)), golden, "air_20_p");
    }

    @Test
    void the_comparison_notices_a_thousandth() {
        var golden = beams().get(0);
        double perturbed = golden.number("out") * 1.001;
        assertThat(relativeError(perturbed, golden.number("out"))).isGreaterThan(TOLERANCE);
    }

    @Test
    void every_beam_of_the_file_is_compared() {
        assertThat(beams()).hasSize(13);
    }

    private static void agrees(double actual, Row golden, String column) {
        assertThat(relativeError(actual, golden.number(column))).as(column).isLessThan(TOLERANCE);
    }

    private static double signal(Row golden, GridModel grid, ReceptorResponse response, double centimetres) {
        return new ReceptorSum(PHYSICS.tables(), filtration(golden), grid, FIELD_RADIUS_CM, response)
                .perMAs(PHYSICS.fluence(golden.number("kV"), golden.number("anode_deg")), centimetres);
    }

    private static TubeVoltage tubeVoltage(Row golden) {
        return TubeVoltage.kilovolts(golden.text("kV"));
    }

    private static Filtration filtration(Row golden) {
        return new Filtration(new BigDecimal(golden.text("Al_mm")), new BigDecimal(golden.text("Cu_mm")));
    }
}
