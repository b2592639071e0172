package wallchart.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Row by row, what differs between two contents of a chart. A row whose examination or band changed counts as withdrawn and added.
 *
 * @param added rows that only the later has, in its order
 * @param withdrawn rows that only the earlier has, in its order
 * @param changed rows of both with other fields, in the order of the later
 * @param addedAdjustments adjustments that only the later has
 * @param withdrawnAdjustments adjustments that only the earlier has
 * @param changedAdjustments adjustments of both with other fields
 * @param reordered whether what both have stands in another order
 */
public record Comparison(
        List<Row> added,
        List<Row> withdrawn,
        List<ChangedRow> changed,
        List<Adjustment> addedAdjustments,
        List<Adjustment> withdrawnAdjustments,
        List<ChangedAdjustment> changedAdjustments,
        boolean reordered) {

    /** One field, before and after, as {@link RowFields} writes it; empty where nothing was or is written. */
    public record FieldChange(String field, String before, String after) {}

    /** A row of both. */
    public record ChangedRow(RowKey key, List<FieldChange> fields) {}

    /** An adjustment of both. */
    public record ChangedAdjustment(String name, List<FieldChange> fields) {}

    /** Compares two contents, neither with a key twice. */
    public static Comparison of(ChartContent earlier, ChartContent later) {
        var rowsBefore = byKey(earlier.rows(), Row::key);
        var rowsAfter = byKey(later.rows(), Row::key);
        var before = byKey(earlier.adjustments(), Adjustment::name);
        var after = byKey(later.adjustments(), Adjustment::name);
        return new Comparison(
                onlyIn(rowsAfter, rowsBefore),
                onlyIn(rowsBefore, rowsAfter),
                changed(rowsBefore, rowsAfter, RowFields::of, ChangedRow::new),
                onlyIn(after, before),
                onlyIn(before, after),
                changed(before, after, RowFields::of, ChangedAdjustment::new),
                reordered(rowsBefore, rowsAfter) || reordered(before, after));
    }

    /** Whether nothing differs at all. */
    public boolean isEmpty() {
        return added.isEmpty()
                && withdrawn.isEmpty()
                && changed.isEmpty()
                && addedAdjustments.isEmpty()
                && withdrawnAdjustments.isEmpty()
                && changedAdjustments.isEmpty()
                && !reordered;
    }

    /** The keys of all rows that differ, then the names of such adjustments. */
    public List<String> names() {
        var names = new ArrayList<String>();
        withdrawn.forEach(row -> names.add(row.key().toString()));
        added.forEach(row -> names.add(row.key().toString()));
        changed.forEach(row -> names.add(row.key().toString()));
        withdrawnAdjustments.forEach(adjustment -> names.add(adjustment.name()));
        addedAdjustments.forEach(adjustment -> names.add(adjustment.name()));
        changedAdjustments.forEach(adjustment -> names.add(adjustment.name()));
        return names;
    }

    private static <K, T> Map<K, T> byKey(List<T> things, Function<T, K> key) {
        var map = new LinkedHashMap<K, T>();
        things.forEach(thing -> map.put(key.apply(thing), thing));
        return map;
    }

    private static <K, T> List<T> onlyIn(Map<K, T> these, Map<K, T> others) {
        return these.entrySet().stream()
                .filter(entry -> !others.containsKey(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static <K, T, C> List<C> changed(
            Map<K, T> before, Map<K, T> after, Function<T, Map<String, String>> fields, Change<K, C> change) {
        var changes = new ArrayList<C>();
        after.forEach((key, thing) -> {
            var earlier = before.get(key);
            if (earlier != null && !earlier.equals(thing)) {
                changes.add(change.of(key, differences(fields.apply(earlier), fields.apply(thing))));
            }
        });
        return changes;
    }

    /** What differs between the fields of two rows, in file order. */
    public static List<FieldChange> differences(Row before, Row after) {
        return differences(RowFields.of(before), RowFields.of(after));
    }

    private static List<FieldChange> differences(Map<String, String> before, Map<String, String> after) {
        return after.keySet().stream()
                .filter(field -> !before.get(field).equals(after.get(field)))
                .map(field -> new FieldChange(field, before.get(field), after.get(field)))
                .toList();
    }

    private static <K, T> boolean reordered(Map<K, T> before, Map<K, T> after) {
        return !before.keySet().stream()
                .filter(after::containsKey)
                .toList()
                .equals(after.keySet().stream().filter(before::containsKey).toList());
    }

    private interface Change<K, C> {
        C of(K key, List<FieldChange> fields);
    }
}
