package wallchart.physics;

import java.util.List;

/**
 * Measured over modelled output of one tube as a power of the tube voltage: factor (kV / 80)^exponent.
 *
 * @param factor measured over modelled output at 80 kV; 1 for a tube that emits what the model says
 * @param exponent how much faster than the model's the tube's output grows with kV; 0 for a tube like the model
 */
public record OutputPair(double factor, double exponent) {

    /** What the fit reads of one measured tube voltage. */
    record Ratio(double kilovolts, double measuredOverModel) {
        private double x() {
            return Math.log(kilovolts / TungstenConstants.OUTPUT_REFERENCE_KV);
        }

        private double y() {
            return Math.log(measuredOverModel);
        }
    }

    /** Least squares of ln(measured / model) on ln(kV / 80); two ratios or more, at different tube voltages. */
    static OutputPair through(List<Ratio> ratios) {
        double meanX = ratios.stream().mapToDouble(Ratio::x).average().orElseThrow();
        double meanY = ratios.stream().mapToDouble(Ratio::y).average().orElseThrow();
        double across = 0;
        double along = 0;
        for (var ratio : ratios) {
            across += (ratio.x() - meanX) * (ratio.y() - meanY);
            along += (ratio.x() - meanX) * (ratio.x() - meanX);
        }
        double exponent = across / along;
        return new OutputPair(Math.exp(meanY - exponent * meanX), exponent);
    }

    /** Measured over modelled output at a tube voltage. */
    public double at(double kilovolts) {
        return factor * Math.pow(kilovolts / TungstenConstants.OUTPUT_REFERENCE_KV, exponent);
    }

    /** The factor with the model's own one in it: what multiplies the spectrum as published. */
    public double absoluteFactor() {
        return TungstenConstants.OUTPUT_SCALE * factor;
    }

    /** The exponent with the model's own one in it. */
    public double absoluteExponent() {
        return TungstenConstants.OUTPUT_EXPONENT + exponent;
    }
}
