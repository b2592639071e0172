package wallchart.physics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.physics.TubeMeasurement.Point;
import wallchart.quantity.Decimals;
import wallchart.quantity.Filtration;

/** Fits the model to one measured tube: first the filtration, then with it the output. */
final class TubeFitting {

    static final int LEAST_POINTS = 3;

    /**
     * Highest over lowest tube voltage. Over less, the noise of a measurement decides the exponent: 3 % at both ends of 80 to 90 kV move it
     * by 0.5, of 80 to 120 kV by 0.15. Our own choice.
     */
    static final double LEAST_SPREAD = 1.5;

    /**
     * Difference of a tube's exponent from the model's. Over 60 to 120 kV 0.5 is a factor of 1.4 between the ends. Our own
     * choice.
     */
    private static final double LARGEST_EXPONENT = 0.5;

    private final BeamPhysics physics;
    private final TubeMeasurement measured;
    private final List<TubeQuestion> ofHalfValueLayer = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    TubeFitting(BeamPhysics physics, TubeMeasurement measured) {
        this.physics = physics;
        this.measured = measured;
    }

    TubeFit fit() {
        var filtration = new FiltrationFit(physics, measured, ofHalfValueLayer).fit();
        var objection = ModelRange.objectionToTube(measured.anodeAngleDegrees(), filtration);
        if (objection.isPresent()) {
            return new TubeFit.Uncalibrated(objection.get(), false);
        }
        var points = pointsWithin(filtration);
        if (points.size() < LEAST_POINTS) {
            return new TubeFit.Uncalibrated(tooFew(points), true);
        }
        return isWide(points) ? calibration(filtration, points) : new TubeFit.Uncalibrated(tooClose(points), true);
    }

    private static boolean isWide(List<Point> ascending) {
        double lowest = ascending.get(0).kV().inKilovolts();
        return ascending.get(ascending.size() - 1).kV().inKilovolts() >= LEAST_SPREAD * lowest;
    }

    private static String tooClose(List<Point> ascending) {
        return "the output is measured from " + ascending.get(0).kV() + " to "
                + ascending.get(ascending.size() - 1).kV()
                + " within 40 to 150 kV: fitting the model to the tube needs a"
                + " highest tube voltage of " + LEAST_SPREAD
                + " times the lowest or more; measure the output farther apart";
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
        var fit = PointsFit.of(points, ratios(points, filtration));
        var minimum = MinimumHalfValueLayers.shipped();
        minimum.findQuestion(measured).ifPresent(ofHalfValueLayer::add);
        minimum.findRemark(measured.halfValueLayerMillimetresAluminium(), measured.halfValueLayerAt())
                .ifPresent(remarks::add);
        return new TubeCalibration(
                filtration,
                measured.statedFiltration(),
                fit.pair(),
                fit.points(),
                ofHalfValueLayer,
                size(points, filtration).stream().toList(),
                course(fit.sound()).stream().toList(),
                remarks);
    }

    private List<OutputPair.Ratio> ratios(List<Point> points, Filtration filtration) {
        return points.stream().map(point -> ratio(point, filtration)).toList();
    }

    private OutputPair.Ratio ratio(Point point, Filtration filtration) {
        double modelled = physics.beam(point.kV(), measured.anodeAngleDegrees(), filtration)
                .outputMicroGyPerMAs();
        return new OutputPair.Ratio(point.kV().inKilovolts(), point.microGyPerMAs() / modelled);
    }

    /** With the stated filtration, so that a wrong half-value layer does not blame the outputs; with the fitted one outside the model. */
    private Optional<TubeQuestion> size(List<Point> points, Filtration fitted) {
        boolean reached = ModelRange.objectionToTube(measured.anodeAngleDegrees(), measured.statedFiltration())
                .isEmpty();
        var inBeam = reached ? measured.statedFiltration() : fitted;
        return OutputSurvey.find(physics, measured.anodeAngleDegrees(), ratios(points, inBeam));
    }

    private static Optional<TubeQuestion> course(OutputPair pair) {
        var exponent = Decimals.significant(pair.exponent(), 2);
        return Math.abs(pair.exponent()) <= LARGEST_EXPONENT
                ? Optional.empty()
                : Optional.of(TubeQuestion.ofOutputs(
                        TubeQuestion.OUTPUT_COURSE,
                        "kV^" + exponent + " against the model",
                        "the outputs grow with the tube voltage as the model's times kV^" + exponent
                                + "; questioned beyond " + LARGEST_EXPONENT + " either way",
                        "check which output belongs to which tube voltage, measure again"));
    }
}
