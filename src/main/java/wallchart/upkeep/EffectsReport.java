package wallchart.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.VersionHead;
import wallchart.quantity.Filtration;
import wallchart.technique.ChartEffects;
import wallchart.technique.GridShift;
import wallchart.technique.OutputShift;
import wallchart.technique.RowEffect;

/**
 * What lies between two states of a room's equipment: the tube's output, the grids' factors, and every chart that answers there then or later.
 *
 * @param outputs at each tube voltage at which one of both was measured
 * @param grids conversion factors that differ
 * @param charts the version in force and those scheduled, in the order of their numbers
 * @param fitted what filters the tube's beam as its half-value layer has it
 * @param calibration sentences on the tube as it is afterwards: what is questioned or was confirmed, the fit, remarks
 * @param fit the same in figures; absent where the tube is uncalibrated
 */
public record EffectsReport(
        List<OutputShift> outputs,
        List<GridShift> grids,
        List<OfVersion> charts,
        FittedFiltration fitted,
        List<String> calibration,
        Optional<FittedTube> fit) {

    /** So that rounding does not prefer a row where a measured tube voltage moves as much. */
    private static final double NO_DIFFERENCE = 1e-6;

    /** Fitted filtration before and after; absent where the tube is uncalibrated. */
    public record FittedFiltration(Optional<Filtration> before, Optional<Filtration> after) {}

    /**
     * What the change does to one version.
     *
     * @param effects against the state before
     * @param sinceSigning against the state for which the version was signed
     */
    public record OfVersion(VersionHead version, ChartEffects effects, SinceSigning sinceSigning) {}

    /**
     * What became of one version since it was signed: small steps add up.
     *
     * @param revision number of the state that was in force then
     * @param outputs of the tube, at each tube voltage at which one of both was measured
     */
    public record SinceSigning(int revision, List<OutputShift> outputs, ChartEffects effects) {
        public SinceSigning {
            outputs = List.copyOf(outputs);
        }

        /** As {@link EffectsReport#largestOutput}. */
        public Optional<OutputShift> largestOutput() {
            return largest(outputs, effects.moved().stream());
        }
    }

    public EffectsReport {
        outputs = List.copyOf(outputs);
        grids = List.copyOf(grids);
        charts = List.copyOf(charts);
        calibration = List.copyOf(calibration);
    }

    /** Rows to look at, each once however many versions have it. */
    public int affectedRows() {
        return (int) rows().filter(RowEffect::affected)
                .map(RowEffect::rowKey)
                .distinct()
                .count();
    }

    /** Where the output after over before lies farthest from 1, measured or as a row uses it; empty where none is predicted. */
    public Optional<OutputShift> largestOutput() {
        return largest(outputs, rows());
    }

    private static Optional<OutputShift> largest(List<OutputShift> outputs, Stream<RowEffect> rows) {
        return Stream.concat(outputs.stream(), rows.flatMap(row -> row.output().stream()))
                .reduce((one, other) -> size(other) > size(one) + NO_DIFFERENCE ? other : one);
    }

    private static double size(OutputShift shift) {
        return Math.abs(Math.log(shift.ratio()));
    }

    private Stream<RowEffect> rows() {
        return charts.stream().flatMap(chart -> chart.effects().moved().stream());
    }
}
