package wallchart.physics;

import wallchart.quantity.Distance;
import wallchart.quantity.FieldSize;

/**
 * One beam quality: a tube voltage, an anode angle and a total filtration, with what follows from them. Immutable.
 *
 * <p>Model values, uncalibrated: a real tube's output differs from them by some 25 % either way, most often it is lower.
 */
public final class Beam {

    private static final double MILLIMETRES_PER_CENTIMETRE = 10;

    private final PerEnergy fluence;
    private final double airKerma;
    private final double firstHalfValueLayer;
    private final double quarterValueLayer;
    private final BeamBackscatter backscatter;

    /** @param fluence photons per cm2 and mAs at one metre, behind filter and air */
    Beam(PerEnergy fluence, BeamTables tables) {
        var kerma = fluence.times(tables.response(ReceptorResponse.AIR_KERMA));
        var aluminium = tables.perCentimetre(Material.ALUMINIUM);
        this.fluence = fluence;
        this.airKerma = kerma.sum();
        this.firstHalfValueLayer = thicknessThatLeaves(1 / 2.0, kerma, aluminium);
        this.quarterValueLayer = thicknessThatLeaves(1 / 4.0, kerma, aluminium);
        this.backscatter = tables.backscatter().of(fluence.times(tables.waterKerma()));
    }

    /**
     * Centimetres that let the given share of the kerma through. Newton's method on ln(kerma), which falls ever less steeply with
     * thickness, so that from 0 it nears the answer from below and cannot overshoot.
     */
    private static double thicknessThatLeaves(double share, PerEnergy kerma, PerEnergy perCentimetre) {
        double wanted = kerma.sum() * share;
        double thickness = 0;
        double step;
        do {
            var left = kerma.times(perCentimetre.transmission(thickness));
            double remaining = left.sum();
            step = Math.log(remaining / wanted) * remaining / left.weightedBy(perCentimetre);
            thickness += step;
        } while (step > 1e-9);
        return thickness;
    }

    /** Air kerma per mAs at one metre from the focus, in microgray, behind the filter and one metre of air. */
    public double outputMicroGyPerMAs() {
        return airKerma;
    }

    /** Thickness of aluminium that halves the air kerma, narrow beam. */
    public double halfValueLayerMillimetresAluminium() {
        return firstHalfValueLayer * MILLIMETRES_PER_CENTIMETRE;
    }

    /** Thickness of aluminium that halves it once more, beyond the first half-value layer. */
    public double secondHalfValueLayerMillimetresAluminium() {
        return (quarterValueLayer - firstHalfValueLayer) * MILLIMETRES_PER_CENTIMETRE;
    }

    /** Mean over all photons, not weighted by their energy. */
    public double meanEnergyKiloelectronvolts() {
        return fluence.weightedBy(PerEnergy.of(EnergyBins::energyOf)) / fluence.sum();
    }

    /**
     * Entrance surface kerma over incident kerma, on water, for a rectangular field at the skin; as the circle of equal area.
     *
     * @throws IllegalArgumentException if the distance is 0
     */
    public double backscatterFactor(FieldSize fieldAtSkin, Distance focusSkin) {
        double diameter = 2 * Math.sqrt(fieldAtSkin.areaSquareCentimetres() / Math.PI);
        return backscatterFactor(diameter, focusSkin.inCentimetres());
    }

    /**
     * The same for a circular field (a square of side a counts as a diameter of 1.128 a).
     *
     * <p>The table spans diameters of 1-30 cm and focus-to-skin distances of 50-100 cm. Beyond, its end value is held: the factor
     * has all but levelled off above 30 cm, and over the whole span of distances it moves by 2 % or so.
     *
     * @throws IllegalArgumentException if either is not a number above 0
     */
    public double backscatterFactor(double diameterCentimetres, double focusSkinCentimetres) {
        if (!(diameterCentimetres > 0) || !(focusSkinCentimetres > 0)) {
            throw new IllegalArgumentException("backscatter asked for a field of " + diameterCentimetres
                    + " cm at a focus-to-skin distance of " + focusSkinCentimetres + " cm: both must be above 0");
        }
        return backscatter.at(diameterCentimetres, focusSkinCentimetres);
    }
}
