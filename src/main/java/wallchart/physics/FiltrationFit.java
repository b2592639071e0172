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

    private final BeamPhysics physics;
    private final TubeMeasurement measured;
    private final List<String> remarks;

    /** @param remarks where this writes what it cannot do, and what is notable about the half-value layer */
    FiltrationFit(BeamPhysics physics, TubeMeasurement measured, List<String> remarks) {
        this.physics = physics;
        this.measured = measured;
        this.remarks = remarks;
    }

    /** The fitted filtration, or the stated one with a remark where the model does not reach the half-value layer. */
    Filtration fit() {
        MinimumHalfValueLayers.shipped()
                .findRemark(measured.halfValueLayerMillimetresAluminium(), measured.halfValueLayerAt())
                .ifPresent(remarks::add);
        var objection =
                physics.findObjection(measured.halfValueLayerAt(), measured.anodeAngleDegrees(), filtration(LEAST));
        if (objection.isPresent()) {
            remarks.add("the filtration stays as stated, " + measured.statedFiltration()
                    + ", because the half-value layer is measured where the model does not reach: " + objection.get());
            return measured.statedFiltration();
        }
        return wanted() < halfValueLayer(LEAST) || wanted() > halfValueLayer(MOST) ? outOfReach() : bisected();
    }

    private Filtration outOfReach() {
        remarks.add("the half-value layer of " + Decimals.significant(wanted(), 3) + " mm Al at "
                + measured.halfValueLayerAt()
                + " would need a filtration outside the model's 1.5 to 60 mm Al, which give "
                + Decimals.significant(halfValueLayer(LEAST), 3) + " to "
                + Decimals.significant(halfValueLayer(MOST), 3)
                + " mm Al: the filtration stays as stated, " + measured.statedFiltration()
                + "; measure the half-value layer again");
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
