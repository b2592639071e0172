package wallchart.physics;

import java.util.function.IntToDoubleFunction;

/** One number for each energy bin: a spectrum, an attenuation coefficient, a transmission, a detector response. Immutable. */
final class PerEnergy {

    private final double[] values;

    private PerEnergy(double[] values) {
        this.values = values;
    }

    /** @param valueOfBin asked once for each bin, lowest energy first */
    static PerEnergy of(IntToDoubleFunction valueOfBin) {
        var values = new double[EnergyBins.COUNT];
        for (int bin = 0; bin < values.length; bin++) {
            values[bin] = valueOfBin.applyAsDouble(bin);
        }
        return new PerEnergy(values);
    }

    double at(int bin) {
        return values[bin];
    }

    PerEnergy times(PerEnergy other) {
        return of(bin -> values[bin] * other.values[bin]);
    }

    /** Share of photons that pass a thickness, taking these numbers as attenuation per unit of that thickness. */
    PerEnergy transmission(double thickness) {
        return of(bin -> Math.exp(-values[bin] * thickness));
    }

    double sum() {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /** Sum over all bins of these numbers times the others: a spectrum weighted by a response. */
    double weightedBy(PerEnergy weights) {
        double sum = 0;
        for (int bin = 0; bin < values.length; bin++) {
            sum += values[bin] * weights.values[bin];
        }
        return sum;
    }
}
