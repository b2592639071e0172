package wallchart.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import wallchart.chart.Band;
import wallchart.quantity.PartThickness;

/** The thicknesses that a pack answers: the lower end of each band, then every multiple of a step inside it. */
final class PackThicknesses {

    static final BigDecimal STEP_CM = new BigDecimal("0.5");

    /** The least that can be asked for. */
    static final BigDecimal LEAST_CM = new BigDecimal("0.01");

    /** The first that can no longer be asked for. */
    static final BigDecimal BEYOND_CM = new BigDecimal("60.01");

    private PackThicknesses() {}

    /** Ascending, never none; the upper end belongs to the next band. */
    static List<PartThickness> of(Band band) {
        var within = new ArrayList<PartThickness>();
        within.add(askable(band.from()));
        for (var next = stepAfter(band.from()); band.holds(next); next = stepAfter(next)) {
            within.add(next);
        }
        return within;
    }

    private static PartThickness stepAfter(PartThickness thickness) {
        var steps =
                thickness.centimetres().divide(STEP_CM, 0, RoundingMode.DOWN).add(BigDecimal.ONE);
        return new PartThickness(steps.multiply(STEP_CM));
    }

    static PartThickness askable(PartThickness from) {
        return new PartThickness(from.centimetres().max(LEAST_CM));
    }
}
