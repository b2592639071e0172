/**
 * A room's chart held against beam physics, before anybody is exposed: how the exposure at the receptor runs along the thickness,
 * where it jumps or drifts, how far each rule of thumb in use is off at this tube voltage and thickness, what a row costs at the
 * skin beside the site's reference level, and what would cost less. {@link wallchart.grading.ChartPhysics} is the door.
 *
 * <p>Pure: it is handed a room and the content of a chart, and touches neither database nor clock. It advises: nothing here keeps a
 * chart from being signed.
 *
 * <p>The decision that shaped it: outside the beam model there is a sentence, never a number; and findings are gathered by
 * examination, the largest named and the others counted, because a list that nobody reads to its end warns of nothing.
 */
package wallchart.grading;
