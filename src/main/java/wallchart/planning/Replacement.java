package wallchart.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.chart.Row;
import wallchart.quantity.Decimals;
import wallchart.signoff.ReviewLimits;
import wallchart.signoff.RowImpact;

/**
 * A row of the room's own that a proposed one would take the place of, and what that moves.
 *
 * @param before the row that answers at the proposed row's reference thickness now, or else one whose band it overlaps
 * @param impact of the proposed row, as the change will show it
 * @param limits of the site, beyond which a physicist has to concur
 */
public record Replacement(Row before, RowImpact impact, ReviewLimits limits) {

    private static final String METHOD = "thicknessMethod";

    /** What to know before it is replaced. */
    List<String> cautions() {
        var cautions = new ArrayList<String>();
        if (impact.needsPhysicist()) {
            cautions.add("takes the place of " + before.key() + ", " + setting(before) + ", with "
                    + setting(impact.after().orElseThrow()) + ": " + moved() + ". If that row is proven, keep it");
        }
        impact.fields().stream()
                .filter(change -> change.field().equals(METHOD))
                .forEach(change -> cautions.add("the thickness method of " + before.key() + ", " + change.before()
                        + ", gives way to " + change.after()));
        return cautions;
    }

    private static String setting(Row row) {
        return row.setting().kV() + " and " + row.setting().control().mAs();
    }

    private String moved() {
        var exposure = decibels();
        if (exposure.isEmpty() || impact.kermaChangePercent().isEmpty()) {
            return "what that moves is not known, " + String.join("; ", impact.remarks());
        }
        return "receptor exposure " + signed(exposure.getAsDouble()) + " dB, entrance kerma "
                + signed(impact.kermaChangePercent().getAsDouble()) + " %, where the site's limits are "
                + Figures.number(limits.maxExposureShiftDb()) + " dB and " + limits.maxKermaRisePercent() + " % more";
    }

    /** By the beam model, or by the 15 % rule where that does not reach. */
    private OptionalDouble decibels() {
        return impact.predictedShiftDb().isPresent() ? impact.predictedShiftDb() : impact.exposureShiftDb();
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + Decimals.plain(BigDecimal.valueOf(value));
    }
}
