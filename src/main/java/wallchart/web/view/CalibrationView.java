package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.equipment.MeasuredOutput;
import wallchart.physics.CalibratedPoint;
import wallchart.physics.OutputPair;
import wallchart.physics.TubeCalibration;
import wallchart.quantity.Filtration;
import wallchart.technique.ExposureModel;
import wallchart.upkeep.CalibrationReport;

/**
 * How the beam model fits a room's tube.
 *
 * @param measuredOn null where nobody measured the tube
 * @param reason why the tube is uncalibrated; null where it is calibrated, and then all else is there
 * @param confirmed codes of what was confirmed when the measurement was entered
 * @param sentences for whoever measured, what is questioned first
 * @param limits what the model leaves out, a text, written
 */
public record CalibrationView(
        String room,
        int revision,
        LocalDate measuredOn,
        boolean calibrated,
        String reason,
        FiltrationFitView filtration,
        HalfValueLayerView halfValueLayer,
        OutputFitView output,
        List<PointView> points,
        List<String> confirmed,
        List<String> sentences,
        RawValue limits) {

    private static final RawValue LIMITS = Json.writtenOnce(ExposureModel.LIMITS);

    /** Total filtration as stated at the measurement, and as the half-value layer has it. */
    public record FiltrationFitView(
            BigDecimal statedMmAl, BigDecimal statedMmCu, BigDecimal fittedMmAl, BigDecimal fittedMmCu) {
        static FiltrationFitView of(Filtration stated, Filtration fitted) {
            return new FiltrationFitView(
                    stated.aluminiumMillimetres(),
                    stated.copperMillimetres(),
                    fitted.aluminiumMillimetres(),
                    fitted.copperMillimetres());
        }
    }

    /** First half-value layer, mm Al: measured, and as the model has it with the stated and with the fitted filtration. */
    public record HalfValueLayerView(
            BigDecimal kV, BigDecimal measured, Double modelledAsStated, Double modelledAsFitted) {
        static HalfValueLayerView of(MeasuredOutput output, CalibrationReport report) {
            return new HalfValueLayerView(
                    output.halfValueLayerAt().kilovolts(),
                    output.halfValueLayerMillimetresAluminium(),
                    known(report.halfValueLayerStated()),
                    known(report.halfValueLayerFitted()));
        }

        private static Double known(OptionalDouble figure) {
            return figure.isPresent() ? figure.getAsDouble() : null;
        }
    }

    /** Measured over modelled output: factorAt80KV (kV / 80)^exponent. */
    public record OutputFitView(Double factorAt80KV, Double exponent) {
        static OutputFitView of(OutputPair pair) {
            return new OutputFitView(pair.factor(), pair.exponent());
        }
    }

    /** One measured output beside the fit, in uGy/mAs at 1 m; deviationPercent is from the fit of the other points. */
    public record PointView(
            BigDecimal kV,
            Double measured,
            Double fitted,
            Double residualPercent,
            Double deviationPercent,
            boolean questioned) {
        static PointView of(CalibratedPoint point) {
            return new PointView(
                    point.kV().kilovolts(),
                    point.measuredMicroGyPerMAs(),
                    point.fittedMicroGyPerMAs(),
                    tenths(point.residualPercent()),
                    tenths(point.deviationPercent()),
                    point.questioned());
        }

        private static double tenths(double percent) {
            return Math.round(percent * 10) / 10.0;
        }
    }

    public static CalibrationView of(CalibrationReport report) {
        var revision = report.revision();
        var output = revision.room().tube().output();
        var fit = report.fit() instanceof TubeCalibration calibration ? calibration : null;
        return new CalibrationView(
                revision.room().id(),
                revision.number(),
                output.map(MeasuredOutput::measuredOn).orElse(null),
                fit != null,
                report.reason().orElse(null),
                fit == null ? null : FiltrationFitView.of(fit.statedFiltration(), fit.totalFiltration()),
                output.map(measured -> HalfValueLayerView.of(measured, report)).orElse(null),
                fit == null ? null : OutputFitView.of(fit.pair()),
                fit == null
                        ? List.of()
                        : fit.points().stream().map(PointView::of).toList(),
                report.confirmed(),
                fit == null ? List.of() : report.sentences(),
                LIMITS);
    }
}
