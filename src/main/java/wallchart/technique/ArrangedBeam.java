package wallchart.technique;

import java.util.Arrays;
import java.util.Optional;
import wallchart.physics.ReceptorResponse;
import wallchart.physics.ReceptorSignal;

/**
 * The beam of one arrangement, made ready for many questions: what {@link ExposureModel} says of the receptor, looked up in tens of
 * nanoseconds instead of microseconds.
 *
 * <p>The tube's own measured output is taken from the model at whole kilovolts and drawn straight between them: within 0.05 % of
 * it. For one thread; made anew for each piece of work.
 */
public final class ArrangedBeam {

    /** Any thickness serves: at one tube voltage the measured output moves every thickness alike. */
    private static final double AT_CENTIMETRES = 10;

    /** Any tube voltage within the model: what else keeps the model from this beam does not depend on it. */
    private static final double AT_KILOVOLTS = 80;

    private static final int HIGHEST_KILOVOLTS = 150;

    private final ExposureModel model;
    private final Arrangement how;
    private final ReceptorResponse response;
    private final Optional<String> beamObjection;
    private final double[] scales = new double[HIGHEST_KILOVOLTS + 1];
    private ReceptorSignal signal;

    /** The beam of that arrangement, its signal as that receptor would have it. */
    public ArrangedBeam(ExposureModel model, Arrangement how, ReceptorResponse response) {
        this.model = model;
        this.how = how;
        this.response = response;
        this.beamObjection = model.findBeamObjection(how, AT_KILOVOLTS);
        Arrays.fill(scales, Double.NaN);
    }

    /** The receptor that the signal is of. */
    public ReceptorResponse response() {
        return response;
    }

    /** The sentence that says why nothing is predicted there; empty where something is. */
    public Optional<String> findObjection(double kilovolts, double thicknessCentimetres) {
        return reaches(kilovolts, thicknessCentimetres)
                ? Optional.empty()
                : model.findObjection(how, kilovolts, thicknessCentimetres);
    }

    private boolean reaches(double kilovolts, double thicknessCentimetres) {
        return beamObjection.isEmpty()
                && table().covers(kilovolts, thicknessCentimetres)
                && how.focusSkinCentimetres(thicknessCentimetres) > 0;
    }

    /**
     * Signal per mAs at the receptor, at the arrangement's distance and with its grid, as {@link ExposureModel#signalPerMAs}.
     *
     * @throws IllegalArgumentException where {@link #findObjection} has something to say
     */
    public double signalPerMAs(double kilovolts, double thicknessCentimetres) {
        beamObjection.ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
        return table().perMAs(kilovolts, thicknessCentimetres) * scale(kilovolts);
    }

    private double scale(double kilovolts) {
        int below = (int) kilovolts;
        double share = kilovolts - below;
        return share == 0 ? scaleAt(below) : scaleAt(below) + share * (scaleAt(below + 1) - scaleAt(below));
    }

    private double scaleAt(int kilovolts) {
        if (Double.isNaN(scales[kilovolts])) {
            scales[kilovolts] = model.signalPerMAs(how, response, kilovolts, AT_CENTIMETRES)
                    / table().perMAs(kilovolts, AT_CENTIMETRES);
        }
        return scales[kilovolts];
    }

    private ReceptorSignal table() {
        if (signal == null) {
            signal = model.signal(how, response);
        }
        return signal;
    }
}
