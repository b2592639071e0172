package wallchart.technique;

import wallchart.chart.FifteenPercentRule;
import wallchart.quantity.Distance;

/** The arithmetic of the trade, each rule once. Pure functions. */
public final class ExposureArithmetic {

    /**
     * Exponent n of the 15 % rule as a power law: 15 % more kV is twice the receptor exposure, so n = ln 2 / ln 1.15 = 4.9595.
     *
     * <p>Common practice, no source. As a power law it is its own inverse; the rule of thumb (x 1.15 up, x 0.85 down) is not.
     * A beam model gives x 2.3 at 60 kV and x 1.6 at 100 kV behind 20 cm of water: it is an average, not physics.
     */
    public static final double FIFTEEN_PERCENT_EXPONENT = FifteenPercentRule.EXPONENT;

    private ExposureArithmetic() {}

    /**
     * Factor on the current-time product that keeps the air kerma at the receptor when only the source-to-receptor distance
     * changes. Inverse-square law, point source. Valid 50 to 300 cm. Leaves out attenuation in air (about 2 % over 80 cm at
     * 60 keV).
     */
    public static double distanceFactor(Distance from, Distance to) {
        double ratio = to.inCentimetres() / from.inCentimetres();
        return ratio * ratio;
    }

    /** Factor on the current-time product that keeps the receptor exposure when the tube voltage changes; kV over 0. */
    public static double voltageFactor(double fromKilovolts, double toKilovolts) {
        return FifteenPercentRule.currentTimeFactor(fromKilovolts, toKilovolts);
    }

    /** Factor on the current-time product for so many centimetres more, doubling over so many centimetres. */
    public static double doublingFactor(double centimetresMore, double centimetresPerDoubling) {
        return Math.pow(2, centimetresMore / centimetresPerDoubling);
    }

    /** Deviation in decibels (the unit of the deviation index, IEC 62494-1): 10 log10 of a ratio of exposures. */
    public static double decibels(double ratio) {
        return 10 * Math.log10(ratio);
    }

    /**
     * Incident air kerma in uGy: output at 1 m times mAs times the inverse square of the focus-skin distance. Free in air,
     * without backscatter (ICRU Report 74, quantity K_i).
     */
    public static double incidentAirKermaMicroGy(
            double microGyPerMAsAtOneMetre, double mAs, double focusSkinCentimetres) {
        double ratio = 100 / focusSkinCentimetres;
        return microGyPerMAsAtOneMetre * mAs * ratio * ratio;
    }
}
