package wallchart.chart;

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

    static boolean isSigned(VersionHead head, ChartContent content) {
        return ContentDigest.of(head.room(), head.number(), content).equals(head.digest());
    }
}
