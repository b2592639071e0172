package wallchart.technique;

import wallchart.physics.Beam;
import wallchart.quantity.AirKerma;

/**
 * One tube's beam at one tube voltage and filtration.
 *
 * @param quality its spectrum as the model has it
 * @param outputPerMAs air kerma per mAs at one metre, in uGy, free in air
 * @param source where that figure comes from, in words
 * @param outputUncertaintyPercent expanded uncertainty of that figure
 */
record TubeBeam(Beam quality, double outputPerMAs, String source, double outputUncertaintyPercent) {

    /** Incident air kerma of so many mAs at a distance from the focus, without backscatter. */
    AirKerma incident(double mAs, double focusSkinCentimetres) {
        return new AirKerma(ExposureArithmetic.incidentAirKermaMicroGy(outputPerMAs, mAs, focusSkinCentimetres));
    }

    /** Entrance over incident air kerma, where the arrangement's field falls on a skin at that distance. */
    double backscatterFactor(Arrangement how, double focusSkinCentimetres) {
        return quality.backscatterFactor(how.fieldDiameterAtSkin(focusSkinCentimetres), focusSkinCentimetres);
    }
}
