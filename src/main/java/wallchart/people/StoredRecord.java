package wallchart.people;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An account or a room token as a row says it is, or as the events say it must be.
 *
 * @param object as the ledger names it
 * @param columns by their names, as texts; a column without a value is left out
 */
record StoredRecord(String object, Map<String, String> columns) {

    StoredRecord {
        columns = Map.copyOf(columns);
    }

    /** The same with another value in a column; without it where that is empty. */
    StoredRecord with(String column, Optional<?> value) {
        var changed = new TreeMap<>(columns);
        changed.remove(column);
        value.ifPresent(now -> changed.put(column, now.toString()));
        return new StoredRecord(object, changed);
    }

    StoredRecord with(String column, String value) {
        return with(column, Optional.of(value));
    }

    StoredRecord with(String column, Instant value) {
        return with(column, Optional.of(value));
    }

    Optional<String> find(String column) {
        return Optional.ofNullable(columns.get(column));
    }

    /** A column in which the other is not the same, of those that either has. */
    Optional<String> findDifference(StoredRecord other) {
        var names = new TreeMap<>(columns);
        names.putAll(other.columns());
        return names.keySet().stream()
                .filter(column -> !find(column).equals(other.find(column)))
                .findFirst();
    }
}
