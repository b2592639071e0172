package wallchart.audit;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallchart.store.OwnersTables.Column;

/** All rows of some tables, in memory, to be changed and put back. */
final class TableContents {

    private final Map<String, List<Column>> columns;
    private final Map<String, List<List<Object>>> stored;
    private final Map<String, List<List<Object>>> touched = new LinkedHashMap<>();
    private final Map<String, Map<List<String>, Integer>> counts = new HashMap<>();

    TableContents(Map<String, List<Column>> columns, Map<String, List<List<Object>>> stored) {
        this.columns = columns;
        this.stored = stored;
    }

    /** The rows as they were stored, to be changed without changing these. */
    TableContents copy() {
        return new TableContents(columns, stored);
    }

    Collection<String> tables() {
        return stored.keySet();
    }

    /** Its rows, to be changed. */
    List<List<Object>> rows(String table) {
        return touched.computeIfAbsent(
                table,
                name -> new ArrayList<>(
                        stored.get(name).stream().map(ArrayList::new).toList()));
    }

    void replace(String table, TableContents other) {
        touched.put(table, other.stored.get(table));
    }

    List<Column> columns(String table) {
        return columns.get(table);
    }

    int position(Column column) {
        return columns.get(column.table()).indexOf(column);
    }

    Column column(String table, String name) {
        return columns.get(table).stream()
                .filter(column -> column.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Object get(String table, int row, String column) {
        return rows(table).get(row).get(position(column(table, column)));
    }

    void set(String table, int row, String column, Object value) {
        rows(table).get(row).set(position(column(table, column)), value);
    }

    /** The tables that have other rows in that copy, whatever their order; none where a tampering changed nothing. */
    Map<String, List<List<Object>>> differentIn(TableContents copy) {
        var different = new LinkedHashMap<String, List<List<Object>>>();
        copy.touched.forEach((table, rows) -> {
            if (!counts.computeIfAbsent(table, name -> counted(stored.get(name)))
                    .equals(counted(rows))) {
                different.put(table, rows);
            }
        });
        return different;
    }

    private static Map<List<String>, Integer> counted(List<List<Object>> rows) {
        var counted = new HashMap<List<String>, Integer>();
        rows.forEach(row -> counted.merge(row.stream().map(TableContents::plain).toList(), 1, Integer::sum));
        return counted;
    }

    /** A text that is the same for equal values. */
    static String plain(Object value) {
        if (value instanceof BigDecimal decimal) {
            return decimal.stripTrailingZeros().toPlainString();
        }
        return value instanceof OffsetDateTime at ? at.toInstant().toString() : value + "";
    }
}
