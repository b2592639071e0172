package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.aBeam;
import static wallchart.physics.PhysicsFixtures.aSignal;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wallchart.quantity.Filtration;

/** What must grow, grows; what must fall, falls: no source is needed for the direction. */
class MonotoneBeamsTest {

    @Property(tries = 100)
    void more_tube_voltage_hardens_the_beam_and_raises_its_output(
            @ForAll @IntRange(min = 400, max = 1490) int tenths, @ForAll @IntRange(min = 150, max = 1200) int filter) {
        var lower = aBeam(tenths / 10.0, aluminium(filter));
        var higher = aBeam((tenths + 10) / 10.0, aluminium(filter));
        assertThat(higher.halfValueLayerMillimetresAluminium())
                .isGreaterThan(lower.halfValueLayerMillimetresAluminium());
        assertThat(higher.outputMicroGyPerMAs()).isGreaterThan(lower.outputMicroGyPerMAs());
    }

    @Property(tries = 100)
    void more_filtration_hardens_the_beam_and_lowers_its_output(
            @ForAll @IntRange(min = 40, max = 150) int kilovolts, @ForAll @IntRange(min = 150, max = 1200) int filter) {
        var less = aBeam(kilovolts, aluminium(filter));
        var more = aBeam(kilovolts, aluminium(filter + 10));
        assertThat(more.halfValueLayerMillimetresAluminium()).isGreaterThan(less.halfValueLayerMillimetresAluminium());
        assertThat(more.outputMicroGyPerMAs()).isLessThan(less.outputMicroGyPerMAs());
    }

    @Property(tries = 100)
    void the_second_half_value_layer_is_thicker_than_the_first(@ForAll @IntRange(min = 40, max = 150) int kilovolts) {
        var beam = aBeam(kilovolts);
        assertThat(beam.secondHalfValueLayerMillimetresAluminium())
                .isGreaterThan(beam.halfValueLayerMillimetresAluminium());
    }

    @Property
    void the_signal_rises_with_tube_voltage_and_falls_with_thickness(
            @ForAll @DoubleRange(min = 40, max = 149) double kilovolts,
            @ForAll @DoubleRange(min = 0, max = 35) double centimetres,
            @ForAll GridModel grid,
            @ForAll ReceptorResponse response) {
        var signal = aSignal(grid, response);
        double here = signal.perMAs(kilovolts, centimetres);
        assertThat(signal.perMAs(kilovolts + 0.5, centimetres)).isGreaterThan(here);
        assertThat(signal.perMAs(kilovolts, centimetres + 0.5)).isLessThan(here);
    }

    @Property
    void scatter_grows_with_the_field(
            @ForAll @DoubleRange(min = 0.5, max = 23) double radius,
            @ForAll @DoubleRange(min = 1, max = 36) double centimetres,
            @ForAll @IntRange(min = 0, max = EnergyBins.COUNT - 1) int bin) {
        assertThat(scatterFactor(GridModel.NONE, radius + 1, centimetres).at(bin))
                .isGreaterThan(
                        scatterFactor(GridModel.NONE, radius, centimetres).at(bin));
    }

    @Property
    void a_grid_takes_away_scatter(
            @ForAll @DoubleRange(min = 1, max = 24) double radius,
            @ForAll @DoubleRange(min = 1, max = 36) double centimetres,
            @ForAll @IntRange(min = 0, max = EnergyBins.COUNT - 1) int bin) {
        assertThat(scatterFactor(GridModel.R8, radius, centimetres).at(bin))
                .isLessThan(scatterFactor(GridModel.NONE, radius, centimetres).at(bin));
    }

    private static PerEnergy scatterFactor(GridModel grid, double radius, double centimetres) {
        return PHYSICS.tables()
                .scatter()
                .of(ReceptorResponse.AIR_KERMA, grid, radius)
                .factorBehind(centimetres);
    }

    private static Filtration aluminium(int hundredths) {
        return Filtration.aluminium(BigDecimal.valueOf(hundredths, 2).toPlainString());
    }
}
