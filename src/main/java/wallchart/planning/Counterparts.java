package wallchart.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.equipment.Grid;
import wallchart.equipment.Receptor;
import wallchart.equipment.Room;
import wallchart.equipment.Support;
import wallchart.quantity.Distance;
import wallchart.technique.Arrangement;

/** What in one room stands for what a row of another room is made with. */
final class Counterparts {

    private final Room from;
    private final Room to;
    private final RoomTransfer asked;

    Counterparts(Room from, Room to, RoomTransfer asked) {
        this.from = from;
        this.to = to;
        this.asked = asked;
    }

    /** What comes of looking for it. */
    sealed interface Search {}

    /** How the exposure is arranged in the room the row is brought to. */
    record Found(Arrangement how) implements Search {}

    /** The room has nothing that could stand for it. */
    record Missing(String reason) implements Search {}

    /** @param how the row as it is arranged in its own room */
    Search find(Row row, Arrangement how) {
        var kind = asked.supports()
                .getOrDefault(how.support().kind(), how.support().kind());
        var support = to.findSupport(kind);
        if (support.isEmpty()) {
            return new Missing("room " + to.id() + " has no " + kind.slug() + ": name one of its supports in supports");
        }
        var sid = support.get().sids().nearest(how.sid());
        var receptor = receptor(row, support.get());
        if (receptor.isEmpty()) {
            return new Missing(noReceptor(row, support.get()));
        }
        var grid = grid(how, support.get(), sid);
        return grid.isEmpty()
                ? new Missing(noGrid(row, support.get()))
                : new Found(new Arrangement(
                        to, support.get(), receptor.get(), to.findGrid(grid.get()), how.added(), how.field(), sid));
    }

    private Optional<Receptor> receptor(Row row, Support support) {
        var own = row.setting().receptor();
        var named = Optional.ofNullable(asked.receptors().get(own)).or(() -> sameRoom(own));
        var kind = from.findReceptor(own).map(Receptor::kind);
        return support.receptors().stream()
                .filter(id -> named.isEmpty() || named.get().equals(id))
                .map(to::findReceptor)
                .flatMap(Optional::stream)
                .filter(receptor -> receptor.takes(row.setting().field()))
                .min(Comparator.comparing((Receptor receptor) -> !kind.equals(Optional.of(receptor.kind()))));
    }

    private String noReceptor(Row row, Support support) {
        var named = Optional.ofNullable(asked.receptors().get(row.setting().receptor()));
        return named.map(id -> "receptor " + id + " cannot be used at the "
                                + support.kind().slug() + " of room " + to.id() + " with a field of ")
                        .orElse("no receptor at the " + support.kind().slug() + " of room " + to.id()
                                + " takes a field of ")
                + row.setting().field() + " cm";
    }

    /** The id of the grid, or {@code none}; empty where nothing can stand for it. */
    private Optional<String> grid(Arrangement how, Support support, Distance sid) {
        var own = how.grid().map(Grid::id).orElse(Grid.NONE);
        var named = Optional.ofNullable(asked.grids().get(own)).or(() -> sameRoom(own));
        if (named.isPresent() || how.grid().isEmpty()) {
            return Optional.of(named.orElse(Grid.NONE)).filter(support.grids()::contains);
        }
        double ratio = how.grid().get().ratio().doubleValue();
        return support.grids().stream()
                .map(to::findGrid)
                .flatMap(Optional::stream)
                .min(Comparator.comparing((Grid grid) -> !isInFocus(grid, sid))
                        .thenComparing(grid -> Math.abs(grid.ratio().doubleValue() - ratio))
                        .thenComparing(Grid::ratio))
                .map(Grid::id);
    }

    private static boolean isInFocus(Grid grid, Distance sid) {
        return grid.focalRange().map(range -> range.contains(sid)).orElse(true);
    }

    private String noGrid(Row row, Support support) {
        var own = row.setting().grid();
        return "nothing at the " + support.kind().slug() + " of room " + to.id() + " stands for grid " + own
                + ": name one in grids, of " + String.join(", ", support.grids());
    }

    private Optional<String> sameRoom(String own) {
        return from.id().equals(to.id()) ? Optional.of(own) : Optional.empty();
    }

    /** What is named and is not there, by its place in the request. */
    List<String> unknownSupports() {
        return asked.supports().entrySet().stream()
                .filter(pair -> from.findSupport(pair.getKey()).isEmpty()
                        || to.findSupport(pair.getValue()).isEmpty())
                .map(pair -> pair.getKey().slug())
                .toList();
    }

    List<String> unknownGrids() {
        return asked.grids().entrySet().stream()
                .filter(pair -> !hasGrid(from, pair.getKey()) || !hasGrid(to, pair.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static boolean hasGrid(Room room, String id) {
        return id.equals(Grid.NONE) || room.findGrid(id).isPresent();
    }

    List<String> unknownReceptors() {
        return asked.receptors().entrySet().stream()
                .filter(pair -> from.findReceptor(pair.getKey()).isEmpty()
                        || to.findReceptor(pair.getValue()).isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    }
}
