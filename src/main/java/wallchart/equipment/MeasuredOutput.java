package wallchart.equipment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What the medical physicist measured of one tube: air kerma per mAs at 1 m, free in air, without backscatter.
 *
 * @param measuredOn day of the measurement
 * @param totalFiltration filtration in the beam at the measurement
 * @param halfValueLayerMillimetresAluminium first half-value layer, over 0
 * @param halfValueLayerAt tube voltage of that half-value layer
 * @param uncertaintyPercent expanded uncertainty of an air kerma computed from it, over 0
 * @param points by ascending tube voltage, at least two
 */
public record MeasuredOutput(
        LocalDate measuredOn,
        Filtration totalFiltration,
        BigDecimal halfValueLayerMillimetresAluminium,
        TubeVoltage halfValueLayerAt,
        BigDecimal uncertaintyPercent,
        List<Point> points) {

    private static final int LEAST_POINTS = 2;

    /** Output at one tube voltage, in uGy/mAs at 1 m. */
    public record Point(TubeVoltage kV, BigDecimal microGyPerMAs) {
        public Point {
            if (microGyPerMAs.signum() <= 0) {
                throw new IllegalArgumentException(
                        "output at " + kV + " is " + microGyPerMAs + " uGy/mAs: it must be over 0");
            }
        }
    }

    public MeasuredOutput {
        Ascending.require(
                "kV of the measured outputs", points.stream().map(Point::kV).toList());
        if (points.size() < LEAST_POINTS) {
            throw new IllegalArgumentException("one measured output: at least two tube voltages are needed");
        }
        requirePositive("half-value layer (mm Al)", halfValueLayerMillimetresAluminium);
        requirePositive("uncertainty (%)", uncertaintyPercent);
        points = List.copyOf(points);
    }

    private static void requirePositive(String what, BigDecimal value) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(what + " is " + value.toPlainString() + ": it must be over 0");
        }
    }

    /** Whether a tube voltage lies within the measured ones. */
    public boolean covers(double kV) {
        return kV >= lowest().inKilovolts() && kV <= highest().inKilovolts();
    }

    public TubeVoltage lowest() {
        return points.get(0).kV();
    }

    public TubeVoltage highest() {
        return points.get(points.size() - 1).kV();
    }

    /**
     * Output in uGy/mAs at 1 m, interpolated on ln(output) against ln(kV); beyond the measured tube voltages the nearest two
     * points are extended, which a caller that cares finds out from {@link #covers}.
     */
    public double microGyPerMAs(double kV) {
        int upper = 1;
        while (upper < points.size() - 1 && kV > points.get(upper).kV().inKilovolts()) {
            upper++;
        }
        var low = points.get(upper - 1);
        var high = points.get(upper);
        double exponent = Math.log(
                        high.microGyPerMAs().doubleValue() / low.microGyPerMAs().doubleValue())
                / Math.log(high.kV().inKilovolts() / low.kV().inKilovolts());
        return low.microGyPerMAs().doubleValue() * Math.pow(kV / low.kV().inKilovolts(), exponent);
    }
}
