/**
 * The chart of a room: rows, bands, named adjustments, immutable signed versions, and the findings that keep a bad chart from
 * being published.
 *
 * <p>Rows are stored by validity (introduced in a version, retired in a later one), so a past version is one query and storage
 * grows with what changed. A version, once published, never changes: it may be cached for ever, and the database refuses to
 * alter it. {@link wallchart.chart.Charts} is the one class that opens transactions.
 */
package wallchart.chart;
