package wallchart.physics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Backscatter factors of water for single photon energies, by focus-to-skin distance and field diameter. */
final class BackscatterTable {

    private static final double[] DIAMETERS = {1, 2, 3, 5, 10, 15, 20, 30};

    private final Axis distances;
    private final PerEnergy[][] factors;

    BackscatterTable(ResourceTable table) {
        var distance = table.numbers("ssd_cm");
        distances = Axis.of(distance);
        factors = new PerEnergy[distances.size()][DIAMETERS.length];
        for (int d = 0; d < DIAMETERS.length; d++) {
            var column = table.numbers("d" + (int) DIAMETERS[d]);
            for (int s = 0; s < distances.size(); s++) {
                factors[s][d] = onBins(table.numbers("energy_keV"), column, distance, distances.node(s));
            }
        }
    }

    /** The rows of one distance, brought to whole keV: linear in the logarithm of the energy. */
    private static PerEnergy onBins(double[] energy, double[] column, double[] distance, double wanted) {
        var rows = IntStream.range(0, energy.length)
                .filter(row -> distance[row] == wanted)
                .toArray();
        var axis = new Axis(
                Arrays.stream(rows).mapToDouble(row -> Math.log(energy[row])).toArray());
        var values = Arrays.stream(rows).mapToDouble(row -> column[row]).toArray();
        return PerEnergy.of(bin -> axis.interpolate(Math.log(EnergyBins.energyOf(bin)), values));
    }

    /** Factors of a beam whose photons bring the given water kerma at each energy. */
    BeamBackscatter of(PerEnergy incidentWaterKerma) {
        double total = incidentWaterKerma.sum();
        var mean = new double[distances.size()][DIAMETERS.length];
        for (int s = 0; s < mean.length; s++) {
            for (int d = 0; d < DIAMETERS.length; d++) {
                mean[s][d] = incidentWaterKerma.weightedBy(factors[s][d]) / total;
            }
        }
        return new BeamBackscatter(distances, DIAMETERS, mean);
    }
}
