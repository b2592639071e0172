package wallchart.chart;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.store.ReadTx;

/** Rows and adjustments of a version together, and whether they are what was signed. */
final class ContentStore {

    private final RowStore rows;
    private final AdjustmentStore adjustments;

    ContentStore(RowStore rows, AdjustmentStore adjustments) {
        this.rows = rows;
        this.adjustments = adjustments;
    }

    ChartContent stored(ReadTx tx, VersionHead head) {
        return new ChartContent(
                rows.list(tx, head.room(), head.number()).stream()
                        .map(Placed::value)
                        .toList(),
                adjustments.list(tx, head.room(), head.number()).stream()
                        .map(Placed::value)
                        .toList());
    }

    /** The digests of all these versions of a room, by number, worked out from one look at its rows. */
    Map<Integer, String> digests(ReadTx tx, String room, Collection<Integer> versions) {
        var writtenRows = rows.lives(tx, room).stream()
                .map(life -> life.as(ContentDigest.written(life.value())))
                .toList();
        var writtenAdjustments = adjustments.lives(tx, room).stream()
                .map(life -> life.as(ContentDigest.written(life.value())))
                .toList();
        return versions.stream().collect(Collectors.toMap(Function.identity(), number -> ContentDigest.canonical(
                        new VersionNumber(room, number), in(number, writtenRows), in(number, writtenAdjustments))
                .digest()));
    }

    private static <T> List<T> in(int version, List<Lived<T>> lives) {
        return lives.stream()
                .filter(life -> life.isIn(version))
                .map(Lived::value)
                .toList();
    }

    static boolean isSigned(VersionHead head, ChartContent content) {
        return ContentDigest.of(head.room(), head.number(), content).equals(head.digest());
    }
}
