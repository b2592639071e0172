package wallchart.physics;

import static wallchart.physics.PhysicsFixtures.ANODE;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.aBeam;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wallchart.physics.TubeMeasurement.Point;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** Measurements of an invented tube whose true filtration and output are known. */
final class TubeFixtures {

    static final Filtration TRUE_FILTRATION = Filtration.aluminium("3.27");
    static final OutputPair TRUE_PAIR = new OutputPair(0.82, -0.06);
    static final TubeVoltage EIGHTY = TubeVoltage.kilovolts(80);

    private TubeFixtures() {}

    /** What the tube truly gives, in uGy/mAs at one metre. */
    static double trueOutput(double kilovolts) {
        return TRUE_PAIR.at(kilovolts) * aBeam(kilovolts, TRUE_FILTRATION).outputMicroGyPerMAs();
    }

    /** Half-value layer as it is, filtration stated as 2.5 mm Al, outputs as they are times an error. */
    static TubeMeasurement measured(DoubleUnaryOperator error, int... kilovolts) {
        return measured(Filtration.aluminium("2.5"), trueHalfValueLayer(), error, kilovolts);
    }

    static double trueHalfValueLayer() {
        return aBeam(80, TRUE_FILTRATION).halfValueLayerMillimetresAluminium();
    }

    static TubeMeasurement measured(
            Filtration stated, double halfValueLayer, DoubleUnaryOperator error, int... kilovolts) {
        var points = new ArrayList<Point>();
        for (int kV : kilovolts) {
            points.add(new Point(TubeVoltage.kilovolts(kV), trueOutput(kV) * error.applyAsDouble(kV)));
        }
        return new TubeMeasurement(ANODE, stated, halfValueLayer, EIGHTY, points);
    }

    static TubeCalibration calibrated(DoubleUnaryOperator error, int... kilovolts) {
        return (TubeCalibration) PHYSICS.calibrate(measured(error, kilovolts));
    }

    static List<String> codes(TubeCalibration calibration) {
        return calibration.questions().stream().map(TubeQuestion::code).toList();
    }

    static List<String> questionedKilovolts(TubeCalibration calibration) {
        return calibration.questioned().stream()
                .map(point -> point.kV().toString())
                .toList();
    }
}
