package wallchart.physics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wallchart.physics.CalibratedPoint.Standing;
import wallchart.physics.TubeMeasurement.Point;

/**
 * Measured outputs held against their own fit, and which of them are to be questioned.
 *
 * @param pair through all points
 * @param sound through those that the odd one out leaves; the same where there is none
 * @param points in the order given
 */
record PointsFit(OutputPair pair, OutputPair sound, List<CalibratedPoint> points) {

    /** Of three points, any two fit: whichever is left out, nothing is learnt. */
    private static final int LEAST_TO_LEAVE_ONE_OUT = 4;

    static PointsFit of(List<Point> points, List<OutputPair.Ratio> ratios) {
        var all = judged(points, ratios);
        var far = all.stream().filter(CalibratedPoint::isFar).toList();
        var odd = far.isEmpty() || points.size() < LEAST_TO_LEAVE_ONE_OUT
                ? Optional.<Integer>empty()
                : findOdd(points, ratios, all);
        var standing = IntStream.range(0, all.size())
                .mapToObj(i -> all.get(i).standing(standing(all.get(i), i, odd)))
                .toList();
        var pair = OutputPair.through(ratios);
        return new PointsFit(
                pair, odd.map(i -> OutputPair.through(without(ratios, i))).orElse(pair), standing);
    }

    private static Standing standing(CalibratedPoint point, int index, Optional<Integer> odd) {
        if (odd.isPresent()) {
            return odd.get() == index ? Standing.ODD_ONE_OUT : Standing.SOUND;
        }
        return point.isFar() ? Standing.QUESTIONED : Standing.SOUND;
    }

    /** The point without which all others fit; of several such, the one that stands farthest from the others. */
    private static Optional<Integer> findOdd(
            List<Point> points, List<OutputPair.Ratio> ratios, List<CalibratedPoint> all) {
        return IntStream.range(0, points.size())
                .boxed()
                .filter(i -> all.get(i).isFar())
                .filter(i ->
                        judged(without(points, i), without(ratios, i)).stream().noneMatch(CalibratedPoint::isFar))
                .max(Comparator.comparing(i -> off(all.get(i))));
    }

    /** How far a point stands from the others; half as much counts like twice as much. */
    private static double off(CalibratedPoint point) {
        return Math.abs(Math.log(1 + point.deviationPercent() / 100));
    }

    private static List<CalibratedPoint> judged(List<Point> points, List<OutputPair.Ratio> ratios) {
        var pair = OutputPair.through(ratios);
        return IntStream.range(0, points.size())
                .mapToObj(i -> beside(pair, OutputPair.through(without(ratios, i)), points.get(i), ratios.get(i)))
                .toList();
    }

    private static <T> List<T> without(List<T> all, int index) {
        var others = new ArrayList<>(all);
        others.remove(index);
        return others;
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
                (overOthers - 1) * 100,
                Standing.SOUND);
    }
}
