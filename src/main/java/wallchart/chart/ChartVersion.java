package wallchart.chart;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An immutable, signed, numbered version of a room's chart, ready to be looked up.
 *
 * <p>Thread-safe. Rows are found by examination without a walk over the chart, so an answer costs the same on a chart of forty
 * rows and of four thousand.
 */
public final class ChartVersion {

    private final VersionHead head;
    private final ChartContent content;
    private final SortedMap<String, SortedMap<String, Map<String, List<Row>>>> byExamination;
    private final Map<Examined, List<Row>> rows = new HashMap<>();
    private final Map<String, Adjustment> adjustments;

    public ChartVersion(VersionHead head, ChartContent content) {
        this.head = head;
        this.content = content;
        this.byExamination = index(content.rows());
        byExamination.forEach((bodyPart, projections) -> projections.forEach((projection, groups) ->
                groups.forEach((group, ofGroup) -> rows.put(new Examined(bodyPart, projection, group), ofGroup))));
        this.adjustments = content.adjustments().stream()
                .collect(Collectors.toUnmodifiableMap(Adjustment::name, Function.identity()));
    }

    /** What a query names of a row, but for support and thickness: one look-up finds its rows. */
    private record Examined(String bodyPart, String projection, String patientGroup) {}

    private static SortedMap<String, SortedMap<String, Map<String, List<Row>>>> index(List<Row> rows) {
        var index = new TreeMap<String, SortedMap<String, Map<String, List<Row>>>>();
        rows.stream()
                .sorted(Comparator.comparing(row -> row.key().band().from()))
                .forEach(row -> index.computeIfAbsent(row.key().examination().bodyPart(), part -> new TreeMap<>())
                        .computeIfAbsent(row.key().examination().projection(), projection -> new LinkedHashMap<>())
                        .merge(row.key().examination().patientGroup(), List.of(row), ChartVersion::joined));
        return index;
    }

    private static List<Row> joined(List<Row> rows, List<Row> more) {
        return Stream.concat(rows.stream(), more.stream()).toList();
    }

    public VersionHead head() {
        return head;
    }

    public ChartContent content() {
        return content;
    }

    /** Body parts that have rows, in alphabetical order. */
    public List<String> bodyParts() {
        return List.copyOf(byExamination.keySet());
    }

    /** Projections of a body part that have rows, in alphabetical order; empty for a body part without rows. */
    public List<String> projections(String bodyPart) {
        return List.copyOf(byExamination.getOrDefault(bodyPart, new TreeMap<>()).keySet());
    }

    /** Patient groups with rows for that body part and projection, in alphabetical order. */
    public List<String> patientGroups(String bodyPart, String projection) {
        return groups(bodyPart, projection).keySet().stream().sorted().toList();
    }

    /** The rows of one body part, projection and patient group at all supports, by ascending lower end of the band. */
    public List<Row> rows(String bodyPart, String projection, String patientGroup) {
        return rows.getOrDefault(new Examined(bodyPart, projection, patientGroup), List.of());
    }

    private Map<String, List<Row>> groups(String bodyPart, String projection) {
        var projections = byExamination.get(bodyPart);
        return projections == null ? Map.of() : projections.getOrDefault(projection, Map.of());
    }

    /** The adjustment of that name. */
    public Optional<Adjustment> findAdjustment(String name) {
        return Optional.ofNullable(adjustments.get(name));
    }
}
