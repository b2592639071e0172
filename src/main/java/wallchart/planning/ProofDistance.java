package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.planning.BandPlanner.Proven;

/**
 * How far a planned band lies from the technique that it is planned from: the farther, the more of it is model and the less is proof.
 * All limits here: common practice, no source.
 */
final class ProofDistance {

    private static final double FAR_CM = 8;
    private static final double FAR_RATIO = 1.5;
    private static final double FAR_KV = 0.15;

    /** Five doublings: at 5 % for each doubling, which is good for a slab of water, a quarter of the mAs is no longer known. */
    private static final double MOST_TIMES = 32;

    private ProofDistance() {}

    /** Why nothing is planned so far away. */
    static Optional<String> findObjection(Proven proven, double thickness, List<Factor> factors) {
        double times = Factor.product(factors);
        return times <= MOST_TIMES && times >= 1 / MOST_TIMES
                ? Optional.empty()
                : Optional.of("at " + Figures.number(thickness) + " cm the mAs would be " + Figures.number(times)
                        + " times the proven one at " + Figures.number(proven.thickness()) + " cm, beyond "
                        + Figures.number(MOST_TIMES) + " times either way: prove a technique nearer to it");
    }

    static List<String> cautions(Proven proven, double thickness, double kV) {
        var cautions = new ArrayList<String>();
        double apart = Math.abs(thickness - proven.thickness());
        double ratio = Math.max(thickness / proven.thickness(), proven.thickness() / thickness);
        if (apart > FAR_CM || ratio > FAR_RATIO) {
            cautions.add(Figures.number(thickness) + " cm lies far from the " + Figures.number(proven.thickness())
                    + " cm at which the technique is proven: prove this band on a phantom of its own thickness");
        }
        if (Math.abs(kV / proven.kV() - 1) > FAR_KV) {
            cautions.add(Figures.number(kV) + " kV lies more than 15 % from the " + Figures.number(proven.kV())
                    + " kV that is proven: contrast changes too, look at images before it is signed");
        }
        return cautions;
    }
}
