package wallchart.chart;

import java.util.List;
import java.util.Optional;

/**
 * An immutable, signed, numbered version of a room's chart, ready to be looked up.
 *
 * <p>Thread-safe. Rows are found by examination without a walk over the chart, so an answer costs the same on a chart of forty
 * rows and of four thousand.
 */
public final class ChartVersion {

    private final VersionHead head;
    private final RowIndex index;

    public ChartVersion(VersionHead head, ChartContent content) {
        this(head, new RowIndex(content));
    }

    ChartVersion(VersionHead head, RowIndex index) {
        this.head = head;
        this.index = index;
    }

    public VersionHead head() {
        return head;
    }

    public ChartContent content() {
        return index.content();
    }

    /** Body parts that have rows, in alphabetical order. */
    public List<String> bodyParts() {
        return index.bodyParts();
    }

    /** Projections of a body part that have rows, in alphabetical order; empty for a body part without rows. */
    public List<String> projections(String bodyPart) {
        return index.projections(bodyPart);
    }

    /** Patient groups with rows for that body part and projection, in alphabetical order. */
    public List<String> patientGroups(String bodyPart, String projection) {
        return index.patientGroups(bodyPart, projection);
    }

    /** The rows of one body part, projection and patient group at all supports, by ascending lower end of the band. */
    public List<Row> rows(String bodyPart, String projection, String patientGroup) {
        return index.rows(bodyPart, projection, patientGroup);
    }

    /** The adjustment of that name. */
    public Optional<Adjustment> findAdjustment(String name) {
        return index.findAdjustment(name);
    }
}
