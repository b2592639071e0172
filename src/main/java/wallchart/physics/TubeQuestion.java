package wallchart.physics;

import java.util.Optional;
import wallchart.quantity.TubeVoltage;

/**
 * Something about a measurement of a tube that whoever made it measures again, or stands by: it may be true, but it looks like a slip.
 *
 * @param code what is named to confirm it, such as {@code output-at-80}
 * @param subject what of the measurement it is about
 * @param kV of the point that it is about; absent where it is about more than one
 * @param value what was measured, with its unit
 * @param finding what looks wrong, beside what
 * @param nextStep what to look at
 */
public record TubeQuestion(
        String code, Subject subject, Optional<TubeVoltage> kV, String value, String finding, String nextStep) {

    /** The half-value layer does not go with the stated filtration; until it is right, the outputs cannot be judged. */
    public static final String HALF_VALUE_LAYER = "half-value-layer";

    /** The half-value layer is under the legal minimum. */
    public static final String HALF_VALUE_LAYER_MINIMUM = "half-value-layer-minimum";

    /** All outputs together are far from what tubes give. */
    public static final String OUTPUT_SIZE = "output-size";

    /** The outputs together are far from those of the measurement in force. */
    public static final String OUTPUT_STEP = "output-step";

    /** The outputs grow with the tube voltage as no tube's do. */
    public static final String OUTPUT_COURSE = "output-course";

    /** Together with the kV: one output is far from the fit of the others. */
    public static final String OUTPUT_AT = "output-at-";

    /** What of a measurement a question is about. */
    public enum Subject {
        OUTPUT,
        HALF_VALUE_LAYER
    }

    static TubeQuestion ofHalfValueLayer(String code, TubeMeasurement measured, String finding, String nextStep) {
        return new TubeQuestion(
                code, Subject.HALF_VALUE_LAYER, Optional.empty(), measured.halfValueLayerWords(), finding, nextStep);
    }

    /** Of all the outputs together. */
    public static TubeQuestion ofOutputs(String code, String value, String finding, String nextStep) {
        return new TubeQuestion(code, Subject.OUTPUT, Optional.empty(), value, finding, nextStep);
    }

    /** For whoever measured, before they answered. */
    public String sentence() {
        return finding + ": " + nextStep + ", or confirm";
    }

    /** The same after they stood by it. */
    public String confirmedSentence() {
        return finding + ": confirmed";
    }
}
