package wallchart.physics;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleFunction;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

/**
 * Signal at the receptor behind a patient of water, for one tube, filtration, grid, field and receptor.
 *
 * <p>Per mAs, with the receptor one metre from the focus; another distance enters only by the inverse square. Use ratios: the
 * absolute value is uncalibrated. Holds for 40-150 kV and 0-36 cm.
 *
 * <p>A table of ln(signal), bilinear between its nodes and within 0.1 % of the direct sum (tried to 20 mm Al). Nodes stand at every whole kV and cm
 * (69 and 70 kV among them, on either side of where the K lines begin) and closer where the signal bends most: below 65 kV and
 * under 10 cm, where whole steps would be up to 1.4 % off. Rows are computed when first asked for, in less than a millisecond.
 *
 * <p>Safe for any number of threads: two that ask at once may both compute a row, and get the same numbers.
 */
public final class ReceptorSignal {

    private static final Axis KILOVOLTS =
            Axis.stepped(ModelRange.LOWEST_KV, 50, 0.25, 65, 0.5, ModelRange.HIGHEST_KV, 1);
    private static final Axis CENTIMETRES =
            Axis.stepped(0, 1, 0.125, 4, 0.25, 10, 0.5, ModelRange.THICKEST_CENTIMETRES, 1);

    private final DoubleFunction<PerEnergy> fluenceAtKilovolts;
    private final PerEnergy[] signalPerPhoton = new PerEnergy[CENTIMETRES.size()];
    private final AtomicReferenceArray<double[]> rows = new AtomicReferenceArray<>(KILOVOLTS.size());

    ReceptorSignal(ReceptorSum sum, DoubleFunction<PerEnergy> fluenceAtKilovolts) {
        this.fluenceAtKilovolts = fluenceAtKilovolts;
        for (int column = 0; column < signalPerPhoton.length; column++) {
            signalPerPhoton[column] = sum.signalPerPhoton(CENTIMETRES.node(column));
        }
    }

    /** Whether the model holds there; if not, {@link #findObjection} says why. */
    public boolean covers(double kilovolts, double thicknessCentimetres) {
        return findObjection(kilovolts, thicknessCentimetres).isEmpty();
    }

    /** The sentence that says why the model does not hold there; empty if it does. */
    public Optional<String> findObjection(double kilovolts, double thicknessCentimetres) {
        return ModelRange.objectionToSignal(kilovolts, thicknessCentimetres);
    }

    /**
     * Signal per mAs: microgray for air kerma, keV per cm2 for caesium iodide.
     *
     * @throws IllegalArgumentException outside 40-150 kV or 0-36 cm, naming the value and the limits
     */
    public double perMAs(double kilovolts, double thicknessCentimetres) {
        ModelRange.refuse(findObjection(kilovolts, thicknessCentimetres));
        int row = KILOVOLTS.intervalOf(kilovolts);
        double inRow = KILOVOLTS.fractionIn(row, kilovolts);
        int column = CENTIMETRES.intervalOf(thicknessCentimetres);
        double inColumn = CENTIMETRES.fractionIn(column, thicknessCentimetres);
        double low = alongRow(row, column, inColumn);
        double logarithm = inRow == 0 ? low : Axis.between(low, alongRow(row + 1, column, inColumn), inRow);
        return Math.exp(logarithm);
    }

    /** As {@link #perMAs(double, double)}. */
    public double perMAs(TubeVoltage tubeVoltage, PartThickness thickness) {
        return perMAs(tubeVoltage.inKilovolts(), thickness.inCentimetres());
    }

    private double alongRow(int index, int column, double inColumn) {
        var row = row(index);
        return Axis.between(row[column], row[column + 1], inColumn);
    }

    private double[] row(int index) {
        var known = rows.get(index);
        if (known != null) {
            return known;
        }
        var computed = logarithmsAt(KILOVOLTS.node(index));
        rows.set(index, computed);
        return computed;
    }

    private double[] logarithmsAt(double kilovolts) {
        var fluence = fluenceAtKilovolts.apply(kilovolts);
        var logarithms = new double[signalPerPhoton.length];
        for (int column = 0; column < logarithms.length; column++) {
            logarithms[column] = Math.log(fluence.weightedBy(signalPerPhoton[column]));
        }
        return logarithms;
    }
}
