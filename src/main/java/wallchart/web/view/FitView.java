package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.physics.CalibratedPoint;
import wallchart.physics.OutputPair;
import wallchart.quantity.Filtration;
import wallchart.upkeep.FittedTube;

/**
 * The beam model fitted to a measured tube, in figures.
 *
 * @param points each measured output beside the fit
 * @param curve output of the fit over the measured tube voltages
 * @param questionedBeyondPercent how far a point may lie off, either way, before it is questioned
 */
public record FitView(
        FiltrationFitView filtration,
        OutputFitView output,
        List<PointView> points,
        List<CurveView> curve,
        Double questionedBeyondPercent) {

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

    /** Output of the fit at one tube voltage, in uGy/mAs at 1 m. */
    public record CurveView(BigDecimal kV, Double fitted) {
        static CurveView of(FittedTube.Output output) {
            return new CurveView(output.kV().kilovolts(), output.microGyPerMAs());
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

    public static FitView of(FittedTube tube) {
        var fit = tube.calibration();
        return new FitView(
                FiltrationFitView.of(fit.statedFiltration(), fit.totalFiltration()),
                OutputFitView.of(fit.pair()),
                fit.points().stream().map(PointView::of).toList(),
                tube.curve().stream().map(CurveView::of).toList(),
                CalibratedPoint.QUESTIONED_ABOVE_PERCENT);
    }
}
