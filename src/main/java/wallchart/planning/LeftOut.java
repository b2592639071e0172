package wallchart.planning;

/**
 * A row that is not proposed.
 *
 * @param row its key: of a plan as it would have been, of a transfer as it stands in the room it comes from
 * @param reason why not: what, the value, the limit
 */
public record LeftOut(String row, String reason) {}
