package wallchart.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.Projection.Code;

/** The projections a chart may name. */
public final class Projections {

    private static final String SNOMED = "SCT";
    private static final Map<String, Projection> BY_SLUG = TermTable.read(
            "/chart/projections.csv",
            "slug,label,viewCode,viewMeaning,modifierScheme,modifierCode,modifierMeaning,eponymCode,eponym",
            Projections::projection);

    private Projections() {}

    private static Projection projection(String[] cells) {
        return new Projection(
                cells[0],
                cells[1],
                new Code(SNOMED, cells[2], cells[3]),
                code(cells[4], cells[5], cells[6]),
                code(SNOMED, cells[7], cells[8]));
    }

    private static Optional<Code> code(String scheme, String value, String meaning) {
        return value.isEmpty() ? Optional.empty() : Optional.of(new Code(scheme, value, meaning));
    }

    /** The projection of that slug. */
    public static Optional<Projection> find(String slug) {
        return Optional.ofNullable(BY_SLUG.get(slug));
    }

    /** All of them, in the order of the table. */
    public static List<Projection> all() {
        return List.copyOf(BY_SLUG.values());
    }
}
