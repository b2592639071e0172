package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.equipment.MeasuredOutput;
import wallchart.physics.CalibratedPoint;
import wallchart.technique.ExposureModel;
import wallchart.upkeep.CalibrationReport;
import wallchart.web.view.FitView.CurveView;
import wallchart.web.view.FitView.FiltrationFitView;
import wallchart.web.view.FitView.OutputFitView;
import wallchart.web.view.FitView.PointView;

/**
 * How the beam model fits a room's tube.
 *
 * @param measuredOn null where nobody measured the tube
 * @param reason why the tube is uncalibrated; null where it is calibrated, and then all else is there
 * @param curve output of the fit over the measured tube voltages
 * @param questionedBeyondPercent how far a point may lie off, either way, before it is questioned
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
        List<CurveView> curve,
        Double questionedBeyondPercent,
        List<String> confirmed,
        List<String> sentences,
        RawValue limits) {

    private static final RawValue LIMITS = Json.writtenOnce(ExposureModel.LIMITS);

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

    public static CalibrationView of(CalibrationReport report) {
        var revision = report.revision();
        var output = revision.room().tube().output();
        var fit = report.fitted().map(FitView::of).orElse(null);
        return new CalibrationView(
                revision.room().id(),
                revision.number(),
                output.map(MeasuredOutput::measuredOn).orElse(null),
                fit != null,
                report.reason().orElse(null),
                fit == null ? null : fit.filtration(),
                output.map(measured -> HalfValueLayerView.of(measured, report)).orElse(null),
                fit == null ? null : fit.output(),
                fit == null ? List.of() : fit.points(),
                fit == null ? List.of() : fit.curve(),
                CalibratedPoint.QUESTIONED_ABOVE_PERCENT,
                report.confirmed(),
                fit == null ? List.of() : report.sentences(),
                LIMITS);
    }
}
