package wallchart.technique;

/**
 * How the output of a room's tube differs between two states of its equipment at one tube voltage, with the tube's own filtration.
 *
 * @param kilovolts a tube voltage at which one of the two was measured
 * @param before uGy/mAs at 1 m, measured or of the beam model
 * @param after the same of the later state
 */
public record OutputShift(double kilovolts, double before, double after) {

    /** The later over the earlier. */
    public double ratio() {
        return after / before;
    }
}
