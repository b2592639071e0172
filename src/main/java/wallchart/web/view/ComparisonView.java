package wallchart.web.view;

import java.util.List;
import wallchart.chart.Comparison;

/** What differs between two versions of a room's chart, row by row. */
public record ComparisonView(
        String room,
        int from,
        int to,
        List<RowView> added,
        List<RowView> withdrawn,
        List<Amendment> amended,
        List<AdjustmentView> addedAdjustments,
        List<AdjustmentView> withdrawnAdjustments,
        List<Amendment> amendedAdjustments,
        boolean reordered) {

    /** A row, or an adjustment, that stands in both versions with other fields. */
    public record Amendment(String key, List<Comparison.FieldChange> fields) {}

    public static ComparisonView of(String room, int from, int to, Comparison comparison) {
        return new ComparisonView(
                room,
                from,
                to,
                comparison.added().stream().map(RowView::of).toList(),
                comparison.withdrawn().stream().map(RowView::of).toList(),
                comparison.changed().stream()
                        .map(row -> new Amendment(row.key().toString(), row.fields()))
                        .toList(),
                comparison.addedAdjustments().stream().map(AdjustmentView::of).toList(),
                comparison.withdrawnAdjustments().stream()
                        .map(AdjustmentView::of)
                        .toList(),
                comparison.changedAdjustments().stream()
                        .map(adjustment -> new Amendment(adjustment.name(), adjustment.fields()))
                        .toList(),
                comparison.reordered());
    }
}
