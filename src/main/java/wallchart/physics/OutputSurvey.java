package wallchart.physics;

import java.util.List;
import java.util.Optional;
import wallchart.quantity.Decimals;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What radiographic tubes give on the whole: 0.008373 kV^1.983 uGy/mAs at 40 in, the mean of about 40 units of a medical-physics survey
 * (2015). Measured outputs are held against it, to notice a slip of unit or distance, which moves all of them alike.
 *
 * <p>The survey names no filtration: 3 mm Al is assumed, at which the model lies 29 % above it at 80 kV.
 */
public final class OutputSurvey {

    /**
     * Where questions begin, over the survey's mean. Tubes differ from it by 25 to 30 % either way; 0.6 to 1.6 leaves room for twice
     * that. Common practice, no source. A slip of mR for uGy is a factor of 8.76, of 60 cm for 1 m one of 2.8.
     */
    private static final double LEAST = 0.6;

    private static final double MOST = 1.6;

    private static final TubeVoltage AT = TubeVoltage.kilovolts(80);
    private static final Filtration ASSUMED = Filtration.aluminium("3");
    private static final double METRES_OF_40_INCHES = 1.016;

    private OutputSurvey() {}

    /** The survey's mean at one metre, in uGy/mAs; published for 40 in, brought there by the inverse square. */
    public static double microGyPerMAs(double kilovolts) {
        return 0.008373 * Math.pow(kilovolts, 1.983) * METRES_OF_40_INCHES * METRES_OF_40_INCHES;
    }

    /**
     * Whether outputs are of a size that tubes have. The median is taken: one wrong output is a matter of its own.
     *
     * @param ratios measured over modelled output, each with the filtration that was in the beam
     */
    static Optional<TubeQuestion> find(BeamPhysics physics, double anodeAngleDegrees, List<OutputPair.Ratio> ratios) {
        double modelled = physics.beam(AT, anodeAngleDegrees, ASSUMED).outputMicroGyPerMAs();
        double brought = median(ratios) * modelled;
        double mean = microGyPerMAs(AT.inKilovolts());
        double share = brought / mean;
        if (share >= LEAST && share <= MOST) {
            return Optional.empty();
        }
        var words = Decimals.significant(share, 3);
        return Optional.of(TubeQuestion.ofOutputs(
                TubeQuestion.OUTPUT_SIZE,
                words + " of the mean",
                "the outputs, brought to " + ASSUMED + ", come to " + Decimals.significant(brought, 3) + " uGy/mAs at "
                        + AT + ", " + words + " of the mean of some 40 units ("
                        + Decimals.significant(mean, 3) + "); questioned outside " + LEAST + " to " + MOST,
                "check the unit (1 mR is 8.76 uGy) and the distance (1 m from the focus), measure again"));
    }

    private static double median(List<OutputPair.Ratio> ratios) {
        var sorted = ratios.stream()
                .mapToDouble(OutputPair.Ratio::measuredOverModel)
                .sorted()
                .toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : Math.sqrt(sorted[middle - 1] * sorted[middle]);
    }
}
