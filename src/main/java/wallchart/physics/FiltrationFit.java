package wallchart.physics;

import java.math.BigDecimal;
import java.util.List;
import wallchart.quantity.Decimals;
import wallchart.quantity.Filtration;

/**
 * The total filtration that gives a measured half-value layer, by bisection on the aluminium, to 0.01 mm; copper stays as stated.
 * More aluminium always means a thicker half-value layer.
 */
final class FiltrationFit {

    private static final int HUNDREDTHS = 2;
    private static final int LEAST = (int) Math.round(ModelRange.LEAST_ALUMINIUM * 100);
    private static final int MOST = (int) Math.round(ModelRange.MOST_ALUMINIUM * 100);

    /**
     * Fitted and stated filtration may be so far apart, mm Al. A half-value layer 5 % off, as measured with some care, moves the fit by
     * 0.2 to 0.5 mm; one noted at a tube voltage 20 kV off moves it by 0.9 mm of 2.5 and by 1.1 of 3. Our own choice between them.
     */
    private static final double FARTHEST_FROM_STATED = 0.8;

    private final BeamPhysics physics;
    private final TubeMeasurement measured;
    private final List<TubeQuestion> questions;

    /** @param questions where this writes what is to be asked about the half-value layer */
    FiltrationFit(BeamPhysics physics, TubeMeasurement measured, List<TubeQuestion> questions) {
        this.physics = physics;
        this.measured = measured;
        this.questions = questions;
    }

    /** The fitted filtration, or the stated one with a remark where the model does not reach the half-value layer. */
    Filtration fit() {
        var objection =
                physics.findObjection(measured.halfValueLayerAt(), measured.anodeAngleDegrees(), filtration(LEAST));
        if (objection.isPresent()) {
            ask(
                    "the filtration stays as stated, " + measured.statedFiltration()
                            + ", because the half-value layer is measured where the model does not reach, "
                            + objection.get(),
                    "measure it between 40 and 150 kV");
            return measured.statedFiltration();
        }
        return wanted() < halfValueLayer(LEAST) || wanted() > halfValueLayer(MOST)
                ? outOfReach()
                : besideStated(bisected());
    }

    private Filtration besideStated(Filtration fitted) {
        double apart = fitted.aluminiumMillimetres()
                .subtract(measured.statedFiltration().aluminiumMillimetres())
                .doubleValue();
        if (Math.abs(apart) > FARTHEST_FROM_STATED) {
            ask(
                    "the half-value layer of " + measured.halfValueLayerWords() + " fits " + fitted + " in the beam, "
                            + Decimals.significant(Math.abs(apart), 2) + " mm Al " + (apart < 0 ? "under" : "over")
                            + " the stated " + measured.statedFiltration() + "; questioned beyond "
                            + FARTHEST_FROM_STATED + " mm Al",
                    "check the tube voltage it was measured at and the filtration in the beam, measure again");
        }
        return fitted;
    }

    private void ask(String finding, String nextStep) {
        questions.add(TubeQuestion.ofHalfValueLayer(TubeQuestion.HALF_VALUE_LAYER, measured, finding, nextStep));
    }

    private Filtration outOfReach() {
        ask(
                "the half-value layer of " + measured.halfValueLayerWords()
                        + " would need a filtration outside the model's 1.5 to 60 mm Al, which give "
                        + Decimals.significant(halfValueLayer(LEAST), 3) + " to "
                        + Decimals.significant(halfValueLayer(MOST), 3) + " mm Al, so the filtration stays as stated, "
                        + measured.statedFiltration(),
                "measure the half-value layer again");
        return measured.statedFiltration();
    }

    private Filtration bisected() {
        int below = LEAST;
        int above = MOST;
        while (above - below > 1) {
            int middle = (below + above) / 2;
            if (halfValueLayer(middle) <= wanted()) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return filtration(wanted() - halfValueLayer(below) <= halfValueLayer(above) - wanted() ? below : above);
    }

    private double wanted() {
        return measured.halfValueLayerMillimetresAluminium();
    }

    private double halfValueLayer(int hundredths) {
        return physics.beam(measured.halfValueLayerAt(), measured.anodeAngleDegrees(), filtration(hundredths))
                .halfValueLayerMillimetresAluminium();
    }

    private Filtration filtration(int hundredths) {
        return new Filtration(
                BigDecimal.valueOf(hundredths, HUNDREDTHS),
                measured.statedFiltration().copperMillimetres());
    }
}
