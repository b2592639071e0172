package wallchart.signoff;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.chart.RowKey;

/**
 * All that a change does to a chart.
 *
 * @param rows one for each row it touches, in the order of the first edit
 * @param adjustments all named adjustments as they are to be; absent where they stay
 */
public record Edits(List<RowEdit> rows, Optional<AdjustmentsEdit> adjustments) {

    /** How many rows one change edits at most: more than a room's chart has, as a rule. */
    public static final int MOST_ROWS = 500;

    /** A change that does nothing yet. */
    public static final Edits NONE = new Edits(List.of(), Optional.empty());

    public Edits {
        rows = List.copyOf(rows);
    }

    /**
     * The named adjustments, which change as one unit.
     *
     * @param wanted as they are to be
     * @param basedOn the version the author saw
     */
    public record AdjustmentsEdit(List<Adjustment> wanted, int basedOn) {
        public AdjustmentsEdit {
            wanted = List.copyOf(wanted);
        }
    }

    /** What is done to the row of that key. */
    public Optional<RowEdit> find(RowKey key) {
        return rows.stream().filter(edit -> edit.key().equals(key)).findFirst();
    }
}
