package wallchart.grading;

/**
 * What a row does to the receptor at one thickness, before any rounding to stations.
 *
 * @param thicknessCm thickness
 * @param kV tube voltage that the row's rules reach
 * @param mAs current-time product that the row's rules reach
 * @param decibels receptor exposure over that of the examination's reference; 0 is equal
 */
public record CurvePoint(double thicknessCm, double kV, double mAs, double decibels) {}
