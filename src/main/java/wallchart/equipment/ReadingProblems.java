package wallchart.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Gathers what is wrong with one document, so that a person sees every problem at once and not one after the other.
 *
 * <p>Not thread-safe; lives for one reading.
 */
final class ReadingProblems {

    private static final int LONGEST_MESSAGE = 400;

    private final List<EquipmentReading.Problem> found = new ArrayList<>();

    List<EquipmentReading.Problem> found() {
        return List.copyOf(found);
    }

    void add(String field, String message) {
        found.add(new EquipmentReading.Problem(field, shortened(message)));
    }

    /** Messages repeat what was written; a whole page of it helps nobody. */
    private static String shortened(String message) {
        return message.length() <= LONGEST_MESSAGE
                ? message
                : message.substring(0, LONGEST_MESSAGE / 2) + " … "
                        + message.substring(message.length() - LONGEST_MESSAGE / 2);
    }

    int count() {
        return found.size();
    }

    /** As {@link #at}, but only where nothing was noted since the given count: a problem inside is told once, not twice. */
    <T> Optional<T> sound(int countBefore, String field, Supplier<T> making) {
        return count() > countBefore ? Optional.empty() : at(field, making);
    }

    /** What the supplier makes; where it refuses, the problem is noted at that field. */
    <T> Optional<T> at(String field, Supplier<T> making) {
        try {
            return Optional.of(making.get());
        } catch (IllegalArgumentException impossible) {
            add(field, impossible.getMessage());
            return Optional.empty();
        }
    }

    /** What the function makes of a value that must be there. */
    <V, T> Optional<T> required(String field, V value, Function<V, T> making) {
        if (value == null) {
            add(field, "is missing: it must be given");
            return Optional.empty();
        }
        return at(field, () -> making.apply(value));
    }

    /** What the function makes of a value that may be absent. */
    <V, T> Optional<T> optional(String field, V value, Function<V, T> making) {
        return value == null ? Optional.empty() : at(field, () -> making.apply(value));
    }

    /** Each entry of a list that must be there, by an own reading at {@code field/index}; entries that fail are left out. */
    <V, T> List<T> each(String field, List<V> values, EntryReading<V, T> reading) {
        if (values == null) {
            add(field, "is missing: it must be given");
            return List.of();
        }
        var read = new ArrayList<T>();
        for (int i = 0; i < values.size(); i++) {
            var pointer = field + "/" + i;
            if (values.get(i) == null) {
                add(pointer, "is empty");
            } else {
                reading.read(pointer, values.get(i)).ifPresent(read::add);
            }
        }
        return read;
    }

    /** As {@link #each}, of a list with at least one entry. */
    <V, T> List<T> eachOfSome(String field, List<V> values, EntryReading<V, T> reading) {
        if (values != null && values.isEmpty()) {
            add(field, "is empty: at least one entry is needed");
        }
        return each(field, values, reading);
    }

    /** What the function makes of a list whose entries must all be there. */
    <V, T> Optional<T> all(String field, List<V> values, Function<List<V>, T> making) {
        boolean complete = true;
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) == null) {
                add(field + "/" + i, "is empty");
                complete = false;
            }
        }
        return complete ? at(field, () -> making.apply(values)) : Optional.empty();
    }

    /** How one entry of a list is read. */
    @FunctionalInterface
    interface EntryReading<V, T> {
        Optional<T> read(String pointer, V value);
    }
}
