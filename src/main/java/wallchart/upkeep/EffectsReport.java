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

    /** What the change does to one version. */
    public record OfVersion(VersionHead version, ChartEffects effects) {}

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
        var ofRows = rows().flatMap(row -> row.outputPercent().stream().boxed()).map(percent -> 1 + percent / 100);
        return Stream.concat(outputs.stream().map(OutputShift::ratio), ofRows)
                .reduce((one, other) -> Math.abs(Math.log(other)) > Math.abs(Math.log(one)) ? other : one);
    }

    private Stream<RowEffect> rows() {
        return charts.stream().flatMap(chart -> chart.effects().moved().stream());
    }
}
