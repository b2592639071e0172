package wallchart.web.view;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wallchart.chart.ChartVersion;

/** What differs between two versions of a room's chart, rows in the order of the newer one, withdrawn ones last. */
public record ComparisonView(
        String room, int from, int to, List<RowChange> rows, List<AdjustmentChange> adjustments) {

    /** One row that is not the same in both; before is null where it was added, after where it was withdrawn. */
    public record RowChange(String key, String change, RowView before, RowView after, List<String> fields) {}

    /** One adjustment that is not the same in both. */
    public record AdjustmentChange(String name, String change, AdjustmentView before, AdjustmentView after) {}

    /** Makes the change of one key out of what it was and what it is; either may be null, never both. */
    private interface Change<V, C> {
        C of(String key, V before, V after);
    }

    public static ComparisonView of(ChartVersion from, ChartVersion to) {
        return new ComparisonView(
                to.head().room(),
                from.head().number(),
                to.head().number(),
                changes(rows(from), rows(to), ComparisonView::rowChange),
                changes(
                        adjustments(from),
                        adjustments(to),
                        (name, before, after) -> new AdjustmentChange(name, word(before, after), before, after)));
    }

    private static <V, C> List<C> changes(Map<String, V> from, Map<String, V> to, Change<V, C> change) {
        return Stream.concat(to.keySet().stream(), from.keySet().stream().filter(key -> !to.containsKey(key)))
                .flatMap(key -> changed(key, from.get(key), to.get(key), change).stream())
                .toList();
    }

    private static <V, C> Optional<C> changed(String key, V before, V after, Change<V, C> change) {
        return Objects.equals(before, after) ? Optional.empty() : Optional.of(change.of(key, before, after));
    }

    private static RowChange rowChange(String key, RowView before, RowView after) {
        return new RowChange(key, word(before, after), before, after, fields(before, after));
    }

    private static String word(Object before, Object after) {
        return before == null ? "added" : after == null ? "withdrawn" : "amended";
    }

    private static List<String> fields(RowView before, RowView after) {
        if (before == null || after == null) {
            return List.of();
        }
        return Arrays.stream(RowView.class.getRecordComponents())
                .map(component -> component.getName())
                .filter(name -> !Objects.equals(value(before, name), value(after, name)))
                .toList();
    }

    private static Object value(RowView row, String component) {
        try {
            return RowView.class.getMethod(component).invoke(row);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a row has no " + component, impossible);
        }
    }

    private static Map<String, RowView> rows(ChartVersion version) {
        return byName(version.content().rows().stream().map(RowView::of).toList(), RowView::key);
    }

    private static Map<String, AdjustmentView> adjustments(ChartVersion version) {
        return byName(
                version.content().adjustments().stream().map(AdjustmentView::of).toList(), AdjustmentView::name);
    }

    private static <V> Map<String, V> byName(List<V> values, Function<V, String> name) {
        var named = new LinkedHashMap<String, V>();
        values.forEach(value -> named.put(name.apply(value), value));
        return named;
    }
}
