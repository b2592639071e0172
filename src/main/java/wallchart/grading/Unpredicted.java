package wallchart.grading;

/**
 * A stretch of thickness for which nothing is predicted.
 *
 * @param fromCm where it begins
 * @param toCm where it ends
 * @param reason the sentence that says why
 */
public record Unpredicted(double fromCm, double toCm, String reason) {}
