package wallchart.physics;

import java.util.Arrays;

/**
 * Backscatter factors of one beam. Linear in the focus-to-skin distance and in the logarithm of the diameter, along which the
 * factor runs nearly straight; outside 50-100 cm and 1-30 cm the end value is held.
 */
final class BeamBackscatter {

    private final Axis distances;
    private final Axis logDiameters;
    private final double[][] factors;

    BeamBackscatter(Axis distances, double[] diameters, double[][] factors) {
        this.distances = distances;
        this.logDiameters = new Axis(Arrays.stream(diameters).map(Math::log).toArray());
        this.factors = factors;
    }

    double at(double diameterCentimetres, double focusSkinCentimetres) {
        double logDiameter = Math.log(diameterCentimetres);
        int d = logDiameters.intervalOf(logDiameter);
        double across = logDiameters.fractionIn(d, logDiameter);
        int s = distances.intervalOf(focusSkinCentimetres);
        double near = Axis.between(factors[s][d], factors[s][d + 1], across);
        double far = Axis.between(factors[s + 1][d], factors[s + 1][d + 1], across);
        return Axis.between(near, far, distances.fractionIn(s, focusSkinCentimetres));
    }
}
