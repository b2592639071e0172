/**
 * Charts drafted by the beam model: a full set of bands from one proven technique, and the rows of one room brought to another. What
 * comes of it is a change like any other, drafted, checked, concurred with and signed; nothing here publishes.
 *
 * <p>Uses {@code quantity}, {@code store} (who acts), {@code physics}, {@code equipment}, {@code chart}, {@code technique} and
 * {@code signoff}. Everything but {@link wallchart.planning.ChartPlanner} is pure.
 *
 * <p>What shaped it: a proposed figure must be followed by hand. Each row therefore shows the factors between the technique it comes
 * from and its own, their product is exact, and what the console or the model cannot do is left out and named, never invented.
 */
package wallchart.planning;
