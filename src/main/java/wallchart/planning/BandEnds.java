package wallchart.planning;

import java.util.OptionalDouble;

/**
 * What the model predicts at the ends of a band, where the row is used as its thickness method says: dB of receptor exposure against
 * the reference thickness.
 *
 * @param lowerDb at the lower end; empty where nothing is predicted
 * @param upperDb just under the upper end
 */
public record BandEnds(OptionalDouble lowerDb, OptionalDouble upperDb) {}
