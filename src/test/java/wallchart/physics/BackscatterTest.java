package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.aBeam;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.quantity.Distance;
import wallchart.quantity.FieldSize;

class BackscatterTest {

    /**
     * Photons of 32 and 64 keV only: the factors of the published table itself (Poludniowski, Omar and Andreo, monoenergetic
     * backscatter of water), rows "50,32.0000" and "100,64.0000"; four decimals.
     */
    @Validation
    @ParameterizedTest
    @CsvSource({"32, 10, 50, 1.2943", "32, 1, 50, 1.0759", "64, 20, 100, 1.6152", "64, 30, 100, 1.6859"})
    void one_photon_energy_gives_the_factor_of_the_table(int energy, double diameter, double distance, double factor) {
        var only = PerEnergy.of(bin -> EnergyBins.energyOf(bin) == energy ? 1 : 0);
        assertThat(PHYSICS.tables().backscatter().of(only).at(diameter, distance))
                .isCloseTo(factor, within(1e-9));
    }

    /** Common practice, no source: 1.35 for a trunk; from memory, 1.25 to 1.5 over radiographic beams and fields. */
    @Validation
    @ParameterizedTest
    @CsvSource({"60", "70", "80", "100", "120"})
    void a_trunk_field_scatters_back_about_a_third(double kilovolts) {
        assertThat(aBeam(kilovolts).backscatterFactor(FieldSize.parse("25x25"), Distance.centimetres(75)))
                .isBetween(1.25, 1.5);
    }

    @Property(tries = 200)
    void a_wider_field_scatters_back_more(
            @ForAll @IntRange(min = 50, max = 150) int kilovolts,
            @ForAll @DoubleRange(min = 1, max = 28) double diameter,
            @ForAll @DoubleRange(min = 30, max = 200) double distance) {
        var beam = aBeam(kilovolts);
        assertThat(beam.backscatterFactor(diameter + 2, distance))
                .isGreaterThan(beam.backscatterFactor(diameter, distance));
    }

    @Test
    void a_rectangle_counts_as_the_circle_of_equal_area() {
        var beam = aBeam(80);
        assertThat(beam.backscatterFactor(FieldSize.parse("20x20"), Distance.centimetres(80)))
                .isCloseTo(beam.backscatterFactor(1.1284 * 20, 80), within(1e-5));
        assertThat(beam.backscatterFactor(FieldSize.parse("10x40"), Distance.centimetres(80)))
                .isEqualTo(beam.backscatterFactor(FieldSize.parse("20x20"), Distance.centimetres(80)));
    }

    @Test
    void beyond_the_table_its_end_is_held() {
        var beam = aBeam(80);
        assertThat(beam.backscatterFactor(48, 180)).isEqualTo(beam.backscatterFactor(30, 100));
        assertThat(beam.backscatterFactor(0.5, 20)).isEqualTo(beam.backscatterFactor(1, 50));
    }

    @Test
    void between_two_distances_of_the_table_lies_the_mean_of_both() {
        var beam = aBeam(80);
        double mean = (beam.backscatterFactor(20, 50) + beam.backscatterFactor(20, 100)) / 2;
        assertThat(beam.backscatterFactor(20, 75)).isCloseTo(mean, within(1e-12));
    }

    @Test
    void a_skin_at_the_focus_is_refused() {
        assertThatThrownBy(() -> aBeam(80).backscatterFactor(20, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.0 cm: both must be above 0");
    }
}
