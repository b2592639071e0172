package wallchart.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.function.Function;

/**
 * What must be written so that a stored list becomes the wanted one: entries that go, and entries that come.
 *
 * @param retired ids of stored entries that changed, moved or vanished
 * @param introduced entries to be stored, with their ordinals
 */
record ValidityEdit<T>(List<Long> retired, List<Introduced<T>> introduced) {

    record Introduced<T>(long ordinal, T value) {}

    static <K, T> ValidityEdit<T> between(List<Placed<T>> stored, List<T> wanted, Function<T, K> key) {
        var byKey = new HashMap<K, Placed<T>>();
        stored.forEach(entry -> byKey.put(key.apply(entry.value()), entry));
        var previous = wanted.stream()
                .map(value -> byKey.get(key.apply(value)))
                .map(entry -> entry == null ? 0L : entry.ordinal())
                .toList();
        var ordinals = Ordinals.assign(previous);
        var introduced = new ArrayList<Introduced<T>>();
        for (int i = 0; i < wanted.size(); i++) {
            var value = wanted.get(i);
            var entry = byKey.get(key.apply(value));
            boolean stays = entry != null && entry.value().equals(value) && entry.ordinal() == ordinals.get(i);
            if (stays) {
                byKey.remove(key.apply(value));
            } else {
                introduced.add(new Introduced<>(ordinals.get(i), value));
            }
        }
        var retired = byKey.values().stream().map(Placed::id).sorted().toList();
        return new ValidityEdit<>(retired, introduced);
    }
}
