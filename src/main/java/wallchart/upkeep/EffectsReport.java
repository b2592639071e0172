package wallchart.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.VersionHead;
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
 */
public record EffectsReport(List<OutputShift> outputs, List<GridShift> grids, List<OfVersion> charts) {

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

        /** As {@link EffectsReport#largestOutputRatio}. */
        public Optional<Double> largestOutputRatio() {
            return largest(outputs, effects.moved().stream());
        }
    }

    public EffectsReport {
        outputs = List.copyOf(outputs);
        grids = List.copyOf(grids);
        charts = List.copyOf(charts);
    }

    /** Rows to look at, each once however many versions have it. */
    public int affectedRows() {
        return (int) rows().filter(RowEffect::affected)
                .map(RowEffect::rowKey)
                .distinct()
                .count();
    }

    /** The output after over before that lies farthest from 1, measured or as a row uses it; empty where none is predicted. */
    public Optional<Double> largestOutputRatio() {
        return largest(outputs, rows());
    }

    private static Optional<Double> largest(List<OutputShift> outputs, Stream<RowEffect> rows) {
        var ofRows = rows.flatMap(row -> row.outputPercent().stream().boxed()).map(percent -> 1 + percent / 100);
        return Stream.concat(outputs.stream().map(OutputShift::ratio), ofRows)
                .reduce((one, other) -> Math.abs(Math.log(other)) > Math.abs(Math.log(one)) ? other : one);
    }

    private Stream<RowEffect> rows() {
        return charts.stream().flatMap(chart -> chart.effects().moved().stream());
    }
}
