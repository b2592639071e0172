package wallchart.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Band;
import wallchart.chart.RowReading.Problem;
import wallchart.chart.ThicknessMethod;
import wallchart.quantity.Decimals;
import wallchart.quantity.PartThickness;

/**
 * A full set of bands as somebody wants it.
 *
 * @param kind how tube voltage and mAs follow the thickness from band to band
 * @param kVPerCm how fast the tube voltage rises; given for variable kV only
 * @param from lower end of the first band
 * @param to upper end of the last band
 * @param width width of each band; the last may be narrower by less than half, else it is one with the band before
 */
public record BandPlan(
        Kind kind, Optional<BigDecimal> kVPerCm, PartThickness from, PartThickness to, PartThickness width) {

    /** More than anybody charts of one examination. Common practice, no source. */
    public static final int MOST_BANDS = 60;

    /** How tube voltage and mAs follow the thickness. */
    public enum Kind {
        /** One tube voltage for all bands; inside a band the technique stays as it is. */
        FIXED_KV("fixed-kv"),
        /** So many kV more for each cm, between bands and inside them. */
        VARIABLE_KV("variable-kv"),
        /** One tube voltage for all bands; inside a band the mAs follows the modelled attenuation too. */
        FLAT_EXPOSURE("flat-exposure");

        private final String slug;

        Kind(String slug) {
            this.slug = slug;
        }

        public String slug() {
            return slug;
        }

        /** The kind of that slug. */
        public static Optional<Kind> find(String slug) {
            return List.of(values()).stream()
                    .filter(kind -> kind.slug.equals(slug))
                    .findFirst();
        }
    }

    /**
     * Checks what can be checked without a room.
     *
     * @throws IllegalArgumentException with the first of {@link #problems}
     */
    public BandPlan {
        for (var problem : problems(kind, kVPerCm, from, to, width)) {
            throw new IllegalArgumentException(problem.message());
        }
    }

    /** Everything that is wrong with a plan, by the members of a request: value, limit, next step. */
    public static List<Problem> problems(
            Kind kind, Optional<BigDecimal> kVPerCm, PartThickness from, PartThickness to, PartThickness width) {
        var problems = new ArrayList<Problem>();
        if (kVPerCm.isPresent() && kind != Kind.VARIABLE_KV) {
            problems.add(new Problem(
                    "kVPerCm", "is given with " + kind.slug() + ": only variable-kv has a rate, leave it out"));
        }
        var span = to.centimetres().subtract(from.centimetres());
        if (span.signum() <= 0) {
            problems.add(new Problem("toCm", to + " does not lie over " + from + ", where the first band begins"));
        }
        if (width.centimetres().signum() == 0
                || new BigDecimal(MOST_BANDS).multiply(width.centimetres()).compareTo(span) < 0) {
            problems.add(new Problem(
                    "bandWidthCm",
                    "bands of " + width + " from " + from + " to " + to + " are more than " + MOST_BANDS
                            + ": choose wider bands"));
        }
        return problems;
    }

    /** How fast the tube voltage rises with thickness, in kV per cm. */
    double rate() {
        return kind == Kind.VARIABLE_KV
                ? kVPerCm.orElse(ThicknessMethod.DEFAULT_KV_PER_CM).doubleValue()
                : 0;
    }

    /** The thickness method of the rows. */
    ThicknessMethod method() {
        return switch (kind) {
            case FIXED_KV -> new ThicknessMethod.Fixed();
            case VARIABLE_KV ->
                new ThicknessMethod.KilovoltsPerCentimetre(kVPerCm.orElse(ThicknessMethod.DEFAULT_KV_PER_CM));
            case FLAT_EXPOSURE -> new ThicknessMethod.Attenuation();
        };
    }

    /** The bands, ascending. */
    List<Band> bands() {
        var bands = new ArrayList<Band>();
        var half = width.centimetres().divide(BigDecimal.valueOf(2));
        for (var low = from.centimetres(); low.compareTo(to.centimetres()) < 0; ) {
            var next = low.add(width.centimetres());
            var high = next.add(half).compareTo(to.centimetres()) > 0 ? to.centimetres() : next;
            bands.add(new Band(new PartThickness(low), new PartThickness(high)));
            low = high;
        }
        return bands;
    }

    /** In words: {@code variable-kv, 2 kV per cm}. */
    @Override
    public String toString() {
        return kind == Kind.VARIABLE_KV
                ? kind.slug() + ", " + Decimals.plain(kVPerCm.orElse(ThicknessMethod.DEFAULT_KV_PER_CM)) + " kV per cm"
                : kind.slug();
    }
}
