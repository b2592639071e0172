package wallchart.physics;

import java.util.HashMap;
import java.util.Map;

/** Scattered over primary signal behind water, by photon energy, thickness and field radius, per receptor and grid. */
final class ScatterTable {

    private final Axis energies;
    private final Axis thicknesses;
    private final Axis radii;
    private final Map<String, double[]> ratios = new HashMap<>();

    ScatterTable(ResourceTable table) {
        energies = Axis.of(table.numbers("energy_keV"));
        thicknesses = Axis.of(table.numbers("thickness_cm"));
        radii = Axis.of(table.numbers("field_radius_cm"));
        requireEveryPointInOrder(table);
        for (var response : ReceptorResponse.values()) {
            for (var grid : GridModel.values()) {
                var column = grid.scatterColumn(response);
                ratios.put(column, table.numbers(column));
            }
        }
    }

    private void requireEveryPointInOrder(ResourceTable table) {
        var energy = table.numbers("energy_keV");
        var thickness = table.numbers("thickness_cm");
        var radius = table.numbers("field_radius_cm");
        boolean complete = table.size() == energies.size() * thicknesses.size() * radii.size();
        for (int row = 0; complete && row < table.size(); row++) {
            complete = energy[row] == energies.node(row / radii.size() / thicknesses.size())
                    && thickness[row] == thicknesses.node(row / radii.size() % thicknesses.size())
                    && radius[row] == radii.node(row % radii.size());
        }
        if (!complete) {
            throw new IllegalStateException("the scatter table lacks points or has them out of order");
        }
    }

    /** Scatter for one receptor, grid and circular field. */
    FieldScatter of(ReceptorResponse response, GridModel grid, double radiusCentimetres) {
        var column = ratios.get(grid.scatterColumn(response));
        var logarithms = new double[energies.size()][thicknesses.size() + 1];
        for (int energy = 0; energy < energies.size(); energy++) {
            for (int thickness = 0; thickness < thicknesses.size(); thickness++) {
                int first = (energy * thicknesses.size() + thickness) * radii.size();
                logarithms[energy][thickness + 1] = Math.log1p(atRadius(column, first, radiusCentimetres));
            }
        }
        return new FieldScatter(energies, withZero(thicknesses), logarithms);
    }

    /** Linear in the radius, falling to no scatter at radius 0; a field wider than the table is held at its last radius. */
    private double atRadius(double[] column, int first, double radius) {
        if (radius < radii.node(0)) {
            return column[first] * radius / radii.node(0);
        }
        int below = radii.intervalOf(radius);
        return Axis.between(column[first + below], column[first + below + 1], radii.fractionIn(below, radius));
    }

    private static Axis withZero(Axis axis) {
        var nodes = new double[axis.size() + 1];
        for (int i = 0; i < axis.size(); i++) {
            nodes[i + 1] = axis.node(i);
        }
        return new Axis(nodes);
    }
}
