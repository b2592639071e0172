package wallchart.signoff;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.chart.Adjustment;

/**
 * What a change does to the exposures that a named adjustment is asked for.
 *
 * @param name name of the adjustment
 * @param before as it is today; absent where it is added
 * @param after as it would be; absent where it is withdrawn
 * @param exposureShiftDb the largest shift on any row of the chart, to hundredths of a dB; absent where it is not known
 * @param predictedShiftDb the same by the beam model; absent where it does not reach, of AEC rows and of what is mostly lung
 * @param kermaChangePercent the largest change of entrance air kerma on any row, to tenths; absent where it is not known
 * @param needsPhysicist whether a limit is passed on any row, or nothing is known
 * @param remarks what else to know, in words
 */
public record AdjustmentImpact(
        String name,
        Optional<Adjustment> before,
        Optional<Adjustment> after,
        OptionalDouble exposureShiftDb,
        OptionalDouble predictedShiftDb,
        OptionalDouble kermaChangePercent,
        boolean needsPhysicist,
        List<String> remarks) {

    public AdjustmentImpact {
        remarks = List.copyOf(remarks);
    }
}
