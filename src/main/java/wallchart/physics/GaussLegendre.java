package wallchart.physics;

import java.util.function.DoubleUnaryOperator;

/** Gauss-Legendre quadrature with 32 points: exact for polynomials up to degree 63. */
final class GaussLegendre {

    static final int POINTS = 32;
    private static final double[] NODES = new double[POINTS];
    private static final double[] WEIGHTS = new double[POINTS];

    static {
        for (int i = 0; i < POINTS; i++) {
            placeNode(i);
        }
    }

    private GaussLegendre() {}

    /** The integral of f from a to b. */
    static double integrate(double a, double b, DoubleUnaryOperator f) {
        double middle = (a + b) / 2;
        double half = (b - a) / 2;
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += WEIGHTS[i] * f.applyAsDouble(middle + half * NODES[i]);
        }
        return sum * half;
    }

    /** Newton's method from the usual cosine guess; the roots are simple and well apart, so six steps are plenty. */
    private static void placeNode(int i) {
        double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
        double slope = 0;
        for (int step = 0; step < 6; step++) {
            double previous = 1;
            double value = x;
            for (int degree = 2; degree <= POINTS; degree++) {
                double next = ((2 * degree - 1) * x * value - (degree - 1) * previous) / degree;
                previous = value;
                value = next;
            }
            slope = POINTS * (x * value - previous) / (x * x - 1);
            x -= value / slope;
        }
        NODES[i] = x;
        WEIGHTS[i] = 2 / ((1 - x * x) * slope * slope);
    }
}
