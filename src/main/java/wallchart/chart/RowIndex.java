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
 * The content of a version, ready to be looked up: rows are found by examination without a walk over the chart. Immutable; equal
 * where the content is.
 */
final class RowIndex {

    private final ChartContent content;
    private final SortedMap<String, SortedMap<String, Map<String, List<Row>>>> byExamination;
    private final Map<Examined, List<Row>> rows = new HashMap<>();
    private final Map<String, Adjustment> adjustments;

    /** What a query names of a row, but for support and thickness: one look-up finds its rows. */
    private record Examined(String bodyPart, String projection, String patientGroup) {}

    RowIndex(ChartContent content) {
        this.content = content;
        this.byExamination = index(content.rows());
        byExamination.forEach((bodyPart, projections) -> projections.forEach((projection, groups) ->
                groups.forEach((group, ofGroup) -> rows.put(new Examined(bodyPart, projection, group), ofGroup))));
        this.adjustments = content.adjustments().stream()
                .collect(Collectors.toUnmodifiableMap(Adjustment::name, Function.identity()));
    }

    private static SortedMap<String, SortedMap<String, Map<String, List<Row>>>> index(List<Row> rows) {
        var index = new TreeMap<String, SortedMap<String, Map<String, List<Row>>>>();
        rows.stream()
                .sorted(Comparator.comparing(row -> row.key().band().from()))
                .forEach(row -> index.computeIfAbsent(row.key().examination().bodyPart(), part -> new TreeMap<>())
                        .computeIfAbsent(row.key().examination().projection(), projection -> new LinkedHashMap<>())
                        .merge(row.key().examination().patientGroup(), List.of(row), RowIndex::joined));
        return index;
    }

    private static List<Row> joined(List<Row> rows, List<Row> more) {
        return Stream.concat(rows.stream(), more.stream()).toList();
    }

    ChartContent content() {
        return content;
    }

    List<String> bodyParts() {
        return List.copyOf(byExamination.keySet());
    }

    List<String> projections(String bodyPart) {
        return List.copyOf(byExamination.getOrDefault(bodyPart, new TreeMap<>()).keySet());
    }

    List<String> patientGroups(String bodyPart, String projection) {
        return groups(bodyPart, projection).keySet().stream().sorted().toList();
    }

    private Map<String, List<Row>> groups(String bodyPart, String projection) {
        var projections = byExamination.get(bodyPart);
        return projections == null ? Map.of() : projections.getOrDefault(projection, Map.of());
    }

    List<Row> rows(String bodyPart, String projection, String patientGroup) {
        return rows.getOrDefault(new Examined(bodyPart, projection, patientGroup), List.of());
    }

    Optional<Adjustment> findAdjustment(String name) {
        return Optional.ofNullable(adjustments.get(name));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RowIndex that && content.equals(that.content);
    }

    @Override
    public int hashCode() {
        return content.hashCode();
    }
}
