/**
 * From a signed chart version and a room to what to set on this console for this patient: the rules, in their order, each
 * explained.
 *
 * <p>Pure: it is handed a room, a version and a query, and touches neither database nor clock. "No" is an answer here
 * ({@link wallchart.technique.Answer.Refused}), never an exception. All values before the stations are exact doubles; what a
 * person sets is a decimal quantity again.
 *
 * <p>The factors of thickness, adjustments, grid and distance commute. The grid's factor depends on the tube voltage, so it is
 * read at the voltage that all additions together reach; read at the voltage of the moment it would make the result depend on
 * the order of the steps.
 */
package wallchart.technique;
