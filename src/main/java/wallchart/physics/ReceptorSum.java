package wallchart.physics;

import wallchart.quantity.Filtration;

/**
 * The receptor signal as the sum it is, over every photon energy: filter, air, water, grid, scatter, response. Exact, but a
 * spectrum's length of work; {@link ReceptorSignal} keeps a table of it.
 */
final class ReceptorSum {

    private final PerEnergy water;
    private final PerEnergy besidesWater;
    private final FieldScatter scatter;

    /** @param fieldRadiusCentimetres of a circular field in the receptor plane */
    ReceptorSum(
            BeamTables tables,
            Filtration total,
            GridModel grid,
            double fieldRadiusCentimetres,
            ReceptorResponse response) {
        water = tables.perCentimetre(Material.WATER);
        besidesWater =
                tables.transmission(total).times(tables.transmission(grid)).times(tables.response(response));
        scatter = tables.scatter().of(response, grid, fieldRadiusCentimetres);
    }

    /** What one photon of each energy, leaving the target, adds to the signal behind that much water. */
    PerEnergy signalPerPhoton(double thicknessCentimetres) {
        return besidesWater
                .times(water.transmission(thicknessCentimetres))
                .times(scatter.factorBehind(thicknessCentimetres));
    }

    /** @param fluence of the target at one metre, photons per cm2 and mAs */
    double perMAs(PerEnergy fluence, double thicknessCentimetres) {
        return fluence.weightedBy(signalPerPhoton(thicknessCentimetres));
    }
}
