package wallchart.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.RowKey;

/**
 * All that a change is to do from the start, where somebody prepares it whole instead of editing it row by row.
 *
 * @param rows each whole, by the names of {@code RowFields}: added where the version has no row of its key, else amended
 * @param withdrawn rows of the version that go
 * @param adjustments all named adjustments as they are to be, by the names of {@code RowFields.ADJUSTMENT_NAMES}; absent where they
 *     stay
 */
public record Preparation(
        List<Map<String, String>> rows, List<RowKey> withdrawn, Optional<List<Map<String, String>>> adjustments) {

    public Preparation {
        rows = List.copyOf(rows);
        withdrawn = List.copyOf(withdrawn);
    }
}
