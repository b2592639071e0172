package wallchart.physics;

import java.util.EnumMap;
import java.util.Map;
import wallchart.quantity.Filtration;

/** Every table of the package, read once: coefficients, responses, grids, scatter, backscatter. Immutable. */
final class BeamTables {

    /** Microgray per keV/g: 1 keV is 1.602176634e-16 J (SI 2019, exact). */
    static final double MICROGRAY_PER_KEV_PER_GRAM = 1.602176634e-7;

    private static final double AIR_PATH_CENTIMETRES = 100;

    private final Map<Material, PerEnergy> perCentimetre = new EnumMap<>(Material.class);
    private final Map<GridModel, PerEnergy> gridTransmission = new EnumMap<>(GridModel.class);
    private final Map<ReceptorResponse, PerEnergy> responses = new EnumMap<>(ReceptorResponse.class);
    private final PerEnergy tungsten;
    private final PerEnergy waterKerma;
    private final PerEnergy oneMetreOfAir;
    private final ScatterTable scatter = new ScatterTable(ResourceTable.read("scatter_mc.csv"));
    private final BackscatterTable backscatter = new BackscatterTable(ResourceTable.read("backscatter_water.csv"));

    BeamTables() {
        var attenuation = ResourceTable.read("attenuation_1keV.csv");
        readLinearAttenuation(attenuation);
        tungsten = attenuation.perEnergy("mu_W");
        waterKerma = kermaPerPhoton(attenuation.perEnergy("muen_water"));
        oneMetreOfAir = perCentimetre.get(Material.AIR).transmission(AIR_PATH_CENTIMETRES);
        responses.put(ReceptorResponse.AIR_KERMA, kermaPerPhoton(attenuation.perEnergy("muen_air")));
        responses.put(
                ReceptorResponse.CESIUM_IODIDE,
                ResourceTable.read("csi_response.csv").perEnergy("signal_keV_per_photon"));
        readGrids();
    }

    private void readLinearAttenuation(ResourceTable attenuation) {
        var densities = ResourceTable.read("densities.csv");
        var names = densities.texts("material");
        var values = densities.numbers("rho_g_cm3");
        for (var material : Material.values()) {
            double density = values[names.indexOf(material.nameInTables())];
            var perMass = attenuation.perEnergy("mu_" + material.nameInTables());
            perCentimetre.put(material, PerEnergy.of(bin -> perMass.at(bin) * density));
        }
    }

    private void readGrids() {
        var primary = ResourceTable.read("grid_primary.csv");
        gridTransmission.put(GridModel.NONE, PerEnergy.of(bin -> 1));
        for (var grid : GridModel.values()) {
            grid.ratio().ifPresent(ratio -> gridTransmission.put(grid, primary.perEnergy("r" + ratio)));
        }
    }

    private static PerEnergy kermaPerPhoton(PerEnergy massEnergyAbsorption) {
        return PerEnergy.of(
                bin -> MICROGRAY_PER_KEV_PER_GRAM * EnergyBins.energyOf(bin) * massEnergyAbsorption.at(bin));
    }

    /** Linear attenuation, per cm. */
    PerEnergy perCentimetre(Material material) {
        return perCentimetre.get(material);
    }

    /** Mass attenuation of tungsten, cm2/g. */
    PerEnergy tungsten() {
        return tungsten;
    }

    /** Signal that one photon per cm2 leaves in a receptor. */
    PerEnergy response(ReceptorResponse response) {
        return responses.get(response);
    }

    /** Microgray of water kerma that one photon per cm2 brings. */
    PerEnergy waterKerma() {
        return waterKerma;
    }

    PerEnergy transmission(GridModel grid) {
        return gridTransmission.get(grid);
    }

    /** Share of photons that pass the metal in the beam and one metre of air. */
    PerEnergy transmission(Filtration total) {
        var aluminium = perCentimetre(Material.ALUMINIUM)
                .transmission(total.aluminiumMillimetres().doubleValue() / 10);
        var copper = perCentimetre(Material.COPPER)
                .transmission(total.copperMillimetres().doubleValue() / 10);
        return aluminium.times(copper).times(oneMetreOfAir);
    }

    ScatterTable scatter() {
        return scatter;
    }

    BackscatterTable backscatter() {
        return backscatter;
    }
}
