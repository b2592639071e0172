package wallchart.planning;

/**
 * One factor between the mAs of a proven technique and the mAs proposed.
 *
 * @param name slug: thickness, voltage, output, beam, grid, distance, target
 * @param value what the mAs is multiplied by; over 0
 * @param text where it comes from, in words and numbers
 */
public record Factor(String name, double value, String text) {

    /** What all of them together make of the mAs. */
    static double product(Iterable<Factor> factors) {
        double product = 1;
        for (var factor : factors) {
            product *= factor.value();
        }
        return product;
    }
}
