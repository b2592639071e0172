package wallchart.chart;

/**
 * A row or an adjustment as it stands in its table.
 *
 * @param id of the table's row
 * @param ordinal ascending in the order people gave
 */
record Placed<T>(long id, long ordinal, T value) {}
