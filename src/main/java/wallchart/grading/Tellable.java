package wallchart.grading;

import wallchart.equipment.ReceptorKind;
import wallchart.physics.ReceptorResponse;

/**
 * How small a relative difference the model can tell from none, by what the receptor is made of.
 *
 * <p>A caesium iodide panel is predicted as such. Of every other receptor the air kerma that reaches it is predicted, whose gain from more
 * tube voltage is another one: behind 5 to 20 cm of water, with 3 mm Al, 15 % more kV from 60 kV give a storage phosphor 3 to 11 % more
 * over air kerma, from 50 kV 14 to 20 %; gadolinium oxysulphide 5 to 13 % from 80 kV, 24 to 31 % from 60 kV; caesium iodide itself 7 to 12 %
 * from 70 kV, 22 to 23 % from 50 kV. So 15 % from there on, and 40 % below where a rule moves the tube voltage. Worked out in the same beams as
 * energy absorbed in layers of BaFBr (0.05 and 0.10 g/cm2), Gd2O2S (0.06 and 0.10) and CsI (0.20), coefficients of NISTIR 5632, no
 * escape of fluorescence; layers from memory.
 */
final class Tellable {

    private static final double MODELLED = 0.05;
    private static final double BY_AIR_KERMA = 0.15;
    private static final double BY_AIR_KERMA_AT_LOW_VOLTAGE = 0.40;

    private Tellable() {}

    /**
     * For two exposures at one tube voltage.
     *
     * @param predicted what the receptor is predicted as
     */
    static double atOneVoltage(ReceptorResponse predicted) {
        return predicted == ReceptorResponse.CESIUM_IODIDE ? MODELLED : BY_AIR_KERMA;
    }

    /**
     * For two exposures at different tube voltages.
     *
     * @param made what the receptor is made of
     * @param kilovolts the lower of the two
     */
    static double acrossVoltages(ReceptorResponse predicted, ReceptorKind made, double kilovolts) {
        boolean low = predicted == ReceptorResponse.AIR_KERMA && kilovolts < holdsFrom(made);
        return low ? BY_AIR_KERMA_AT_LOW_VOLTAGE : atOneVoltage(predicted);
    }

    /** What a grade says of it; empty where the receptor itself is modelled. */
    static String words(ReceptorResponse predicted, double tellable) {
        return predicted == ReceptorResponse.CESIUM_IODIDE
                ? ""
                : "; by the air kerma that reaches this receptor, so less than " + Figures.two(tellable * 100)
                        + " % cannot be told from none";
    }

    /** Film lies between screens of gadolinium oxysulphide or the like. */
    private static double holdsFrom(ReceptorKind made) {
        return switch (made) {
            case STORAGE_PHOSPHOR -> 60;
            case CESIUM_IODIDE -> 70;
            case GADOLINIUM_OXYSULPHIDE, FILM_SCREEN -> 80;
        };
    }
}
