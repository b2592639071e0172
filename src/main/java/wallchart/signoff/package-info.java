/**
 * Changes under signature: how a proposed set of row edits becomes the next version of a room's chart, or does not.
 *
 * <p>Uses {@code quantity}, {@code physics}, {@code store}, {@code audit}, {@code people}, {@code equipment}, {@code chart} and
 * {@code technique}.
 *
 * <p>What shaped it: whoever signs must see what the change does to receptor and skin, in numbers, against the site's limits;
 * and what was signed must be what was seen, so the signature names the digest of that impact.
 */
package wallchart.signoff;
