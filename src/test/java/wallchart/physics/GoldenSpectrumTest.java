package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.physics.PhysicsFixtures.ANODE;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.relativeError;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.Regression;

/** The unfiltered spectrum, bin by bin, against the reference implementation: golden_spectrum.csv. */
class GoldenSpectrumTest {

    private static final double TOLERANCE = 1e-4;
    private static final ResourceTable GOLDEN = ResourceTable.read("golden_spectrum.csv");

    @Regression
    @ParameterizedTest
    @ValueSource(ints = {50, 70, 80, 100, 120, 150})
    void every_bin_agrees_with_the_reference_implementation(int kilovolts) {
        assertThat(worstError(kilovolts, PHYSICS.fluence(kilovolts, ANODE))).isLessThan(TOLERANCE);
    }

    @Test
    void no_photon_has_more_energy_than_the_tube_voltage_gives() {
        var fluence = PHYSICS.fluence(80.3, ANODE);
        assertThat(fluence.at(EnergyBins.binOf(80))).isPositive();
        assertThat(fluence.at(EnergyBins.binOf(81))).isZero();
    }

    @Test
    void the_comparison_notices_a_tenth_of_a_percent_in_one_bin() {
        var fluence = PHYSICS.fluence(100, ANODE);
        var changed = PerEnergy.of(bin -> fluence.at(bin) * (bin == EnergyBins.binOf(59) ? 1.001 : 1));
        assertThat(worstError(100, changed)).isGreaterThan(TOLERANCE);
    }

    @Test
    void the_comparison_notices_one_percent_more_attenuation_in_tungsten() {
        var tungsten = PHYSICS.tables().tungsten();
        var denser = PerEnergy.of(bin -> tungsten.at(bin) * 1.01);
        var fluence = new TungstenTarget(100, ANODE, denser).fluenceAtOneMetre();
        assertThat(worstError(100, fluence)).isGreaterThan(TOLERANCE);
    }

    @Test
    void the_comparison_notices_another_anode_angle() {
        assertThat(worstError(100, PHYSICS.fluence(100, ANODE + 0.1))).isGreaterThan(TOLERANCE);
    }

    /** Over the bins with more than one photon per cm2 and mAs; where there is none there, none must be here. */
    private static double worstError(int kilovolts, PerEnergy fluence) {
        var golden = GOLDEN.perEnergy("kV" + kilovolts);
        double worst = 0;
        for (int bin = 0; bin < EnergyBins.COUNT; bin++) {
            double error = golden.at(bin) > 1 ? relativeError(fluence.at(bin), golden.at(bin)) : fluence.at(bin);
            worst = Math.max(worst, error);
        }
        return worst;
    }
}
