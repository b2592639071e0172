package wallchart.physics;

import java.util.Optional;
import wallchart.quantity.Filtration;

/** Where the model holds. Each check answers with the sentence that says why not, or nothing. */
final class ModelRange {

    static final int LOWEST_KV = 40;
    static final int HIGHEST_KV = 150;
    static final int THICKEST_CENTIMETRES = 36;
    private static final double SMALLEST_ANODE_ANGLE = 5;
    private static final double LARGEST_ANODE_ANGLE = 25;
    static final double LEAST_ALUMINIUM = 1.5;
    static final double MOST_ALUMINIUM = 60;
    private static final double MOST_COPPER = 3;

    private ModelRange() {}

    static Optional<String> objectionToBeam(double kilovolts, double anodeAngleDegrees, Filtration total) {
        return objectionToVoltage(kilovolts).or(() -> objectionToTube(anodeAngleDegrees, total));
    }

    static Optional<String> objectionToTube(double anodeAngleDegrees, Filtration total) {
        double aluminium = total.aluminiumMillimetres().doubleValue();
        double copper = total.copperMillimetres().doubleValue();
        return outside("the anode angle", anodeAngleDegrees, SMALLEST_ANODE_ANGLE, LARGEST_ANODE_ANGLE, "degrees")
                .or(() -> outside("the total filtration", aluminium, LEAST_ALUMINIUM, MOST_ALUMINIUM, "mm Al"))
                .or(() -> outside("the copper filter", copper, 0, MOST_COPPER, "mm Cu"));
    }

    static Optional<String> objectionToSignal(double kilovolts, double thicknessCentimetres) {
        return objectionToVoltage(kilovolts)
                .or(() -> outside("the thickness", thicknessCentimetres, 0, THICKEST_CENTIMETRES, "cm"));
    }

    private static Optional<String> objectionToVoltage(double kilovolts) {
        return outside("the tube voltage", kilovolts, LOWEST_KV, HIGHEST_KV, "kV");
    }

    /** Written so that a value that is not a number counts as outside. */
    private static Optional<String> outside(String what, double value, double least, double most, String unit) {
        if (value >= least && value <= most) {
            return Optional.empty();
        }
        return Optional.of(what + " is " + plain(value) + " " + unit + ": the beam model holds from " + plain(least)
                + " to " + plain(most) + " " + unit + "; use measured values instead");
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    static void refuse(Optional<String> objection) {
        objection.ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
    }
}
