package wallchart.physics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.physics.TubeMeasurement.Point;
import wallchart.quantity.Filtration;

/** Fits the model to one measured tube: first the filtration, then with it the output. */
final class TubeFitting {

    private static final int LEAST_POINTS = 3;

    private final BeamPhysics physics;
    private final TubeMeasurement measured;
    private final List<String> remarks = new ArrayList<>();

    TubeFitting(BeamPhysics physics, TubeMeasurement measured) {
        this.physics = physics;
        this.measured = measured;
    }

    TubeFit fit() {
        var filtration = new FiltrationFit(physics, measured, remarks).fit();
        var objection = ModelRange.objectionToTube(measured.anodeAngleDegrees(), filtration);
        if (objection.isPresent()) {
            return new TubeFit.Uncalibrated(objection.get());
        }
        var points = pointsWithin(filtration);
        return points.size() < LEAST_POINTS
                ? new TubeFit.Uncalibrated(tooFew(points))
                : calibration(filtration, points);
    }

    /** The points that the model reaches, by ascending tube voltage; of the others it is remarked why not. */
    private List<Point> pointsWithin(Filtration filtration) {
        var reached = new ArrayList<Point>();
        for (var point : measured.points()) {
            var objection = findObjection(point, filtration);
            objection.ifPresent(why -> remarks.add("the point at " + point.kV() + " is not fitted: " + why));
            if (objection.isEmpty()) {
                reached.add(point);
            }
        }
        reached.sort(Comparator.comparing(Point::kV));
        return reached;
    }

    private Optional<String> findObjection(Point point, Filtration filtration) {
        return physics.findObjection(point.kV(), measured.anodeAngleDegrees(), filtration);
    }

    private static String tooFew(List<Point> points) {
        var measuredAt = points.stream().map(point -> point.kV().toString()).collect(Collectors.joining(" and "));
        return "the output is measured at " + (points.isEmpty() ? "no tube voltage" : measuredAt)
                + " within 40 to 150 kV: fitting the model to the tube needs " + LEAST_POINTS
                + " tube voltages or more; measure the output at others too";
    }

    private TubeCalibration calibration(Filtration filtration, List<Point> points) {
        var ratios = points.stream().map(point -> ratio(point, filtration)).toList();
        var pair = OutputPair.through(ratios);
        var calibrated = new ArrayList<CalibratedPoint>();
        for (int i = 0; i < ratios.size(); i++) {
            var others = new ArrayList<>(ratios);
            others.remove(i);
            calibrated.add(beside(pair, OutputPair.through(others), points.get(i), ratios.get(i)));
        }
        remarkOnThree(calibrated);
        return new TubeCalibration(filtration, measured.statedFiltration(), pair, calibrated, remarks);
    }

    private OutputPair.Ratio ratio(Point point, Filtration filtration) {
        double modelled = physics.beam(point.kV(), measured.anodeAngleDegrees(), filtration)
                .outputMicroGyPerMAs();
        return new OutputPair.Ratio(point.kV().inKilovolts(), point.microGyPerMAs() / modelled);
    }

    private static CalibratedPoint beside(OutputPair all, OutputPair others, Point point, OutputPair.Ratio ratio) {
        double kV = ratio.kilovolts();
        double overAll = ratio.measuredOverModel() / all.at(kV);
        double overOthers = ratio.measuredOverModel() / others.at(kV);
        return new CalibratedPoint(
                point.kV(),
                point.microGyPerMAs(),
                point.microGyPerMAs() / overAll,
                (overAll - 1) * 100,
                (overOthers - 1) * 100);
    }

    /** Three points and two unknowns leave one number over: it says that something is off, and not which. */
    private void remarkOnThree(List<CalibratedPoint> points) {
        if (points.size() == LEAST_POINTS && points.stream().anyMatch(CalibratedPoint::questioned)) {
            remarks.add("three tube voltages do not tell which of them is off: measure all three again, or a fourth");
        }
    }
}
