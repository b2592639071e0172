package wallchart.technique;

import wallchart.quantity.Filtration;

/**
 * How the output of a room's tube differs between two states of its equipment at one tube voltage.
 *
 * @param kilovolts a tube voltage at which one of the two was measured, or that of a row
 * @param filtration all that filters the beam in the later state, as paper states it
 * @param before uGy/mAs at 1 m, measured or of the beam model
 * @param after the same of the later state
 */
public record OutputShift(double kilovolts, Filtration filtration, double before, double after) {

    /** The later over the earlier. */
    public double ratio() {
        return after / before;
    }

    /** The change, to tenths of a percent. */
    public double percent() {
        return Math.round((ratio() - 1) * 1000) / 10.0;
    }
}
