package wallchart.signoff;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.chart.Comparison.FieldChange;
import wallchart.chart.Row;

/**
 * What a change does to one row.
 *
 * @param rowKey key of the row
 * @param kind added, amended or withdrawn
 * @param before the row that answers today: of an added row the one that answers at its reference thickness, where there is one
 * @param after the row as it would be; absent where it is withdrawn
 * @param fields fields that differ between the two, in file order; empty unless both are there
 * @param exposureShiftDb the largest shift of the receptor exposure either way by the 15 % rule, to hundredths of a dB; absent where it is not known
 * @param predictedShiftDb the same by the beam model; absent where it does not reach, of AEC rows and of what is mostly lung
 * @param kermaChangePercent the largest change of the entrance air kerma, upwards first, to tenths; absent where it is not known
 * @param needsPhysicist whether the change passes a limit here, or cannot be computed
 * @param remarks why something is not known, and what else to know, in words
 */
public record RowImpact(
        String rowKey,
        Kind kind,
        Optional<Row> before,
        Optional<Row> after,
        List<FieldChange> fields,
        OptionalDouble exposureShiftDb,
        OptionalDouble predictedShiftDb,
        OptionalDouble kermaChangePercent,
        boolean needsPhysicist,
        List<String> remarks) {

    /** What is done to the row. A row whose examination or band changes is withdrawn, and another is added. */
    public enum Kind {
        ADDED,
        AMENDED,
        WITHDRAWN;

        /** The word used in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public RowImpact {
        fields = List.copyOf(fields);
        remarks = List.copyOf(remarks);
    }
}
