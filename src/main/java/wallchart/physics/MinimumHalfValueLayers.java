package wallchart.physics;

import java.util.Optional;
import wallchart.quantity.Decimals;
import wallchart.quantity.TubeVoltage;

/**
 * Least first half-value layers that 21 CFR 1020.30(m) allows, mm Al, for systems made before and since 10 June 2006. Linear between
 * the tube voltages of the table, 51 to 150 kV; at 70 kV the minimum jumps, and nothing is interpolated across.
 */
final class MinimumHalfValueLayers {

    private static final double LAST_BELOW_THE_JUMP = 70;
    private static final double FIRST_ABOVE_THE_JUMP = 71;
    private static final MinimumHalfValueLayers SHIPPED =
            new MinimumHalfValueLayers(ResourceTable.read("minimum_hvl.csv"));

    private final Axis kilovolts;
    private final double[] older;
    private final double[] newer;

    private MinimumHalfValueLayers(ResourceTable table) {
        var column = table.numbers("kV");
        kilovolts = new Axis(column);
        older = table.numbers("min_HVL_pre2006");
        newer = table.numbers("min_HVL_2006");
    }

    static MinimumHalfValueLayers shipped() {
        return SHIPPED;
    }

    boolean covers(double kV) {
        return kV >= kilovolts.node(0) && kV <= kilovolts.node(kilovolts.size() - 1);
    }

    /** For systems made before 10 June 2006. */
    double older(double kV) {
        return at(kV, older);
    }

    /** For systems made on or after 10 June 2006. */
    double newer(double kV) {
        return at(kV, newer);
    }

    private double at(double kV, double[] column) {
        boolean withinTheJump = kV > LAST_BELOW_THE_JUMP && kV < FIRST_ABOVE_THE_JUMP;
        return kilovolts.interpolate(withinTheJump ? FIRST_ABOVE_THE_JUMP : kV, column);
    }

    /** The sentence on a half-value layer that keeps the older minimum but not the newer one: nobody says which of them holds. */
    Optional<String> findRemark(double halfValueLayer, TubeVoltage at) {
        return isUnderBoth(halfValueLayer, at) ? Optional.empty() : findSentence(halfValueLayer, at);
    }

    /** What is asked about a half-value layer that no system may have, whenever it was made. */
    Optional<TubeQuestion> findQuestion(TubeMeasurement measured) {
        double halfValueLayer = measured.halfValueLayerMillimetresAluminium();
        var at = measured.halfValueLayerAt();
        return findSentence(halfValueLayer, at)
                .filter(sentence -> isUnderBoth(halfValueLayer, at))
                .map(sentence -> TubeQuestion.ofHalfValueLayer(
                        TubeQuestion.HALF_VALUE_LAYER_MINIMUM,
                        measured,
                        sentence,
                        "measure again, have the filtration looked at"));
    }

    private boolean isUnderBoth(double halfValueLayer, TubeVoltage at) {
        return covers(at.inKilovolts()) && halfValueLayer < older(at.inKilovolts());
    }

    /**
     * The sentence on a half-value layer that is under a minimum. When the system was made is not known here: the older minimum
     * decides how the sentence is put, and both are named.
     */
    private Optional<String> findSentence(double halfValueLayer, TubeVoltage at) {
        double kV = at.inKilovolts();
        if (!covers(kV) || halfValueLayer >= newer(kV)) {
            return Optional.empty();
        }
        var measured = "the half-value layer of " + number(halfValueLayer) + " mm Al at " + at;
        var before = number(older(kV)) + " mm Al for systems made before 10 June 2006";
        var since = number(newer(kV)) + " mm Al for systems made since then";
        return Optional.of(
                halfValueLayer < older(kV)
                        ? measured + " is under the minimum of 21 CFR 1020.30(m), " + before + ", " + since
                        : measured + " meets the minimum of 21 CFR 1020.30(m) of " + before + ", but not that of "
                                + since);
    }

    private static String number(double millimetres) {
        return Decimals.significant(millimetres, 3);
    }
}
