package wallchart.physics;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** The ascending nodes of a table along one direction. Outside the nodes the end value is held. */
final class Axis {

    private final double[] nodes;

    Axis(double... nodes) {
        this.nodes = nodes.clone();
    }

    /** The distinct values of a column, ascending. */
    static Axis of(double[] column) {
        return new Axis(Arrays.stream(column).sorted().distinct().toArray());
    }

    /** Evenly spaced pieces, each from where the last one ended: {@code stepped(0, 1, 0.5, 3, 1)} is 0, 0.5, 1, 2, 3. */
    static Axis stepped(double start, double... endsAndSteps) {
        var nodes = DoubleStream.builder().add(start);
        double from = start;
        for (int piece = 0; piece < endsAndSteps.length; piece += 2) {
            long steps = Math.round((endsAndSteps[piece] - from) / endsAndSteps[piece + 1]);
            for (int step = 1; step <= steps; step++) {
                nodes.add(from + step * endsAndSteps[piece + 1]);
            }
            from = endsAndSteps[piece];
        }
        return new Axis(nodes.build().toArray());
    }

    int size() {
        return nodes.length;
    }

    double node(int index) {
        return nodes[index];
    }

    /** Index of the node that starts the interval holding x; the first or last interval when x lies outside. */
    int intervalOf(double x) {
        int found = Arrays.binarySearch(nodes, x);
        int below = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(below, nodes.length - 2));
    }

    /** How far x lies into the interval, 0 at its start and 1 at its end, held at 0 or 1 outside. */
    double fractionIn(int interval, double x) {
        double fraction = (x - nodes[interval]) / (nodes[interval + 1] - nodes[interval]);
        return Math.min(1, Math.max(0, fraction));
    }

    /** Linear between nodes. */
    double interpolate(double x, double[] values) {
        int below = intervalOf(x);
        return between(values[below], values[below + 1], fractionIn(below, x));
    }

    static double between(double start, double end, double fraction) {
        return start + (end - start) * fraction;
    }
}
