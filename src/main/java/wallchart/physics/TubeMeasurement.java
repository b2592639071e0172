package wallchart.physics;

import java.util.List;
import wallchart.quantity.Decimals;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What was measured of one tube, as the beam model needs it to be fitted to that tube.
 *
 * @param statedFiltration total filtration in the beam, as whoever measured states it
 * @param halfValueLayerMillimetresAluminium first half-value layer, over 0
 * @param halfValueLayerAt tube voltage of that half-value layer
 * @param points measured outputs, each tube voltage once
 */
public record TubeMeasurement(
        double anodeAngleDegrees,
        Filtration statedFiltration,
        double halfValueLayerMillimetresAluminium,
        TubeVoltage halfValueLayerAt,
        List<Point> points) {

    /** Air kerma per mAs at one metre from the focus, free in air, at one tube voltage; over 0. */
    public record Point(TubeVoltage kV, double microGyPerMAs) {
        public Point {
            if (!(microGyPerMAs > 0)) {
                throw new IllegalArgumentException(
                        "output at " + kV + " is " + microGyPerMAs + " uGy/mAs: it must be over 0");
            }
        }
    }

    public TubeMeasurement {
        if (!(halfValueLayerMillimetresAluminium > 0)) {
            throw new IllegalArgumentException(
                    "half-value layer is " + halfValueLayerMillimetresAluminium + " mm Al: it must be over 0");
        }
        if (points.stream().map(Point::kV).distinct().count() != points.size()) {
            throw new IllegalArgumentException("measured outputs name a tube voltage twice: each once");
        }
        points = List.copyOf(points);
    }

    String halfValueLayerWords() {
        return Decimals.significant(halfValueLayerMillimetresAluminium, 3) + " mm Al at " + halfValueLayerAt;
    }
}
