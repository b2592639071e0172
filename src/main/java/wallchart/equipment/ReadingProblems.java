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

    private final List<EquipmentReading.Problem> found = new ArrayList<>();

    List<EquipmentReading.Problem> found() {
        return List.copyOf(found);
    }

    void add(String field, String message) {
        found.add(new EquipmentReading.Problem(field, message));
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

    /** How one entry of a list is read. */
    @FunctionalInterface
    interface EntryReading<V, T> {
        Optional<T> read(String pointer, V value);
    }
}
