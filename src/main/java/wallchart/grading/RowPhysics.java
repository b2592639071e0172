package wallchart.grading;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.technique.DoseEstimate;

/**
 * One row held against beam physics.
 *
 * @param row the row
 * @param curve receptor exposure along its band, by ascending thickness; only what is predicted
 * @param notPredicted the rest of its band, with the reason
 * @param dose as it is written, at its reference thickness; absent where the beam model does not reach
 * @param grades how far its rules of thumb are off; none where they were not asked for
 */
public record RowPhysics(
        Row row,
        List<CurvePoint> curve,
        List<Unpredicted> notPredicted,
        Optional<DoseEstimate> dose,
        List<Grade> grades) {

    public RowPhysics {
        curve = List.copyOf(curve);
        notPredicted = List.copyOf(notPredicted);
        grades = List.copyOf(grades);
    }
}
