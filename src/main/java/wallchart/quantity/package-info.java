/**
 * The quantities of the trade as types: what a person sets is a {@link java.math.BigDecimal} at a fixed scale, what physics
 * computes is a {@code double}; the unit is spoken where a number goes in and where it comes out.
 *
 * <p>Uses nothing else of ours. About ten quantities are needed, not a system of units: a general library (tried: JSR-385)
 * hides the number type and is slower, so these are plain records.
 */
package wallchart.quantity;
