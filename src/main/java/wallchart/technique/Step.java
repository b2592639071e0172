package wallchart.technique;

/**
 * One step of a derivation, in words and numbers.
 *
 * @param rule slug of the rule: row, thickness, adjustment, grid, distance, kv-limits, kv-station, mas-station,
 *     current-and-time, dose
 * @param text the step in words
 * @param kV tube voltage after it
 * @param mAs current-time product after it; of an AEC row, the back-up
 */
public record Step(String rule, String text, double kV, double mAs) {}
