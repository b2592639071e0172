package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.equipment.RoomRevision;
import wallchart.quantity.Filtration;
import wallchart.technique.ExposureModel;
import wallchart.technique.GridShift;
import wallchart.technique.OutputShift;
import wallchart.technique.RowEffect;
import wallchart.upkeep.EffectsReport;
import wallchart.upkeep.EffectsReport.OfVersion;
import wallchart.upkeep.EffectsReport.SinceSigning;

/**
 * What a change of a room's equipment does to its tube's output, its grids' factors and its charts.
 *
 * @param comparedWith number of the revision before
 * @param largestOutputRatio output after over before, where it changed most; null where none is predicted
 * @param largestOutputRatioAt where that is; null where it is
 * @param fittedFiltration what filters the tube's beam as its half-value layer has it
 * @param calibration sentences on the tube as it is afterwards: what is questioned or was confirmed, the fit, remarks
 * @param fit the same in figures; null where the tube is uncalibrated
 * @param limits what the figures leave out, a text, written
 */
public record EffectsView(
        String room,
        int comparedWith,
        int affectedRows,
        Double largestOutputRatio,
        BeamView largestOutputRatioAt,
        FittedView fittedFiltration,
        List<String> calibration,
        FitView fit,
        List<OutputView> outputs,
        List<FactorView> gridFactors,
        List<ChartView> charts,
        RawValue limits) {

    private static final RawValue LIMITS = Json.writtenOnce(ExposureModel.LIMITS);

    /** A tube voltage, and all that filters the beam, as paper states it. */
    public record BeamView(Double kV, BigDecimal totalFiltrationMmAl, BigDecimal totalFiltrationMmCu) {
        static BeamView of(OutputShift shift) {
            var filtration = shift.filtration();
            return new BeamView(shift.kilovolts(), filtration.aluminiumMillimetres(), filtration.copperMillimetres());
        }
    }

    /** Aluminium and copper before and after; null where the tube is uncalibrated. */
    public record FittedView(BigDecimal beforeMmAl, BigDecimal beforeMmCu, BigDecimal afterMmAl, BigDecimal afterMmCu) {
        static FittedView of(EffectsReport.FittedFiltration fitted) {
            return new FittedView(
                    fitted.before().map(Filtration::aluminiumMillimetres).orElse(null),
                    fitted.before().map(Filtration::copperMillimetres).orElse(null),
                    fitted.after().map(Filtration::aluminiumMillimetres).orElse(null),
                    fitted.after().map(Filtration::copperMillimetres).orElse(null));
        }
    }

    /** Output of the tube at one tube voltage, in uGy/mAs at 1 m. */
    public record OutputView(Double kV, Double before, Double after, Double changePercent) {
        static OutputView of(OutputShift shift) {
            return new OutputView(shift.kilovolts(), shift.before(), shift.after(), percent(shift.ratio()));
        }
    }

    /** Conversion factor of a grid at one tube voltage. */
    public record FactorView(String grid, Double kV, Double before, Double after, Double changePercent) {
        static FactorView of(GridShift shift) {
            return new FactorView(
                    shift.grid(), shift.kilovolts(), shift.before(), shift.after(), percent(shift.ratio()));
        }
    }

    private static double percent(double ratio) {
        return Math.round((ratio - 1) * 1000) / 10.0;
    }

    /** What became of one version since it was signed. */
    public record SinceSigningView(int comparedWith, int affectedRows, Double largestOutputRatio, List<RowView> moved) {
        static SinceSigningView of(SinceSigning since) {
            return new SinceSigningView(
                    since.revision(),
                    since.effects().affected().size(),
                    since.largestOutput().map(OutputShift::ratio).orElse(null),
                    since.effects().moved().stream().map(RowView::of).toList());
        }
    }

    /** One version of the chart, in force or scheduled. */
    public record ChartView(
            int version,
            Instant inForceFrom,
            int rows,
            int affectedRows,
            List<RowView> moved,
            SinceSigningView sinceSigning) {
        static ChartView of(OfVersion chart) {
            var effects = chart.effects();
            return new ChartView(
                    chart.version().number(),
                    chart.version().inForceFrom(),
                    effects.rows(),
                    effects.affected().size(),
                    effects.moved().stream().map(RowView::of).toList(),
                    SinceSigningView.of(chart.sinceSigning()));
        }
    }

    /**
     * One row as it was signed, at its reference thickness. A figure is null where it is not predicted.
     *
     * @param usable whether the room can still be set to it
     * @param affected whether somebody has to look at it
     */
    public record RowView(
            String row,
            Double outputChangePercent,
            Double predictedShiftDb,
            Double kermaChangePercent,
            boolean usable,
            boolean affected,
            List<String> remarks) {
        static RowView of(RowEffect effect) {
            return new RowView(
                    effect.rowKey(),
                    known(effect.outputPercent()),
                    known(effect.exposureDb()),
                    known(effect.kermaPercent()),
                    effect.usable(),
                    effect.affected(),
                    effect.remarks());
        }

        private static Double known(OptionalDouble figure) {
            return figure.isPresent() ? figure.getAsDouble() : null;
        }
    }

    public static EffectsView of(RoomRevision before, EffectsReport report) {
        return new EffectsView(
                before.room().id(),
                before.number(),
                report.affectedRows(),
                report.largestOutput().map(OutputShift::ratio).orElse(null),
                report.largestOutput().map(BeamView::of).orElse(null),
                FittedView.of(report.fitted()),
                report.calibration(),
                report.fit().map(FitView::of).orElse(null),
                report.outputs().stream().map(OutputView::of).toList(),
                report.grids().stream().map(FactorView::of).toList(),
                report.charts().stream().map(ChartView::of).toList(),
                LIMITS);
    }
}
