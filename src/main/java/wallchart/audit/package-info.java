/**
 * The ledger that a physicist can trust: one event for each business act, chained by hashes, and statements of its head that are
 * signed and kept outside the database.
 *
 * <p>Uses {@code store} only. Whoever does a business act hands its {@link wallchart.audit.Act} to {@link wallchart.audit.Ledger}
 * inside the act's own transaction: both are kept, or neither is.
 *
 * <p>What shaped it: a chain of hashes alone shows neither a cut tail nor a whole chain that was written anew, so its head is
 * signed and compared; and anybody must be able to recompute it without this program, so the digested text is canonical JSON
 * (RFC 8785) in which every number is an integer or a decimal string.
 */
package wallchart.audit;
