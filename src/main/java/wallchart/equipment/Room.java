package wallchart.equipment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One X-ray room with everything the chart depends on; a value that has passed every check.
 *
 * @param id short name that stands in addresses
 * @param name name for people
 */
public record Room(
        String id,
        String name,
        Generator generator,
        Tube tube,
        List<Grid> grids,
        List<Receptor> receptors,
        List<Support> supports) {

    public Room {
        id = Slugs.require("room", id).intern(); // the same few ids stand in every look-up
        if (name.isBlank()) {
            throw new IllegalArgumentException("room name is empty: write the name staff know it by");
        }
        requireDistinct("grid id", grids, Grid::id);
        requireDistinct("receptor id", receptors, Receptor::id);
        requireDistinct("support", supports, support -> support.kind().slug());
        if (supports.isEmpty()) {
            throw new IllegalArgumentException("no support: a room has at least one");
        }
        grids = List.copyOf(grids);
        receptors = List.copyOf(receptors);
        supports = List.copyOf(supports);
    }

    private static <T> void requireDistinct(String what, List<T> things, Function<T, String> name) {
        var counts = things.stream().collect(Collectors.groupingBy(name, Collectors.counting()));
        counts.forEach((id, count) -> {
            if (count > 1) {
                throw new IllegalArgumentException(what + " \"" + id + "\" stands " + count + " times: once each");
            }
        });
    }

    public Optional<Grid> findGrid(String gridId) {
        return find(grids, grid -> grid.id().equals(gridId));
    }

    public Optional<Receptor> findReceptor(String receptorId) {
        return find(receptors, receptor -> receptor.id().equals(receptorId));
    }

    public Optional<Support> findSupport(SupportKind kind) {
        return find(supports, support -> support.kind() == kind);
    }

    /** A loop, not a stream: every technique asks several times. */
    private static <T> Optional<T> find(List<T> things, Predicate<T> wanted) {
        for (var thing : things) {
            if (wanted.test(thing)) {
                return Optional.of(thing);
            }
        }
        return Optional.empty();
    }
}
