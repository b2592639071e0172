/**
 * The one database behind a department's charts: how it is opened, migrated, read and written.
 *
 * <p>Every other package states its SQL in a package-private {@code …Store} class and is handed a {@link
 * wallchart.store.ReadTx} or {@link wallchart.store.Tx}; what decides about connections, transactions, durability and
 * dialects stands here and nowhere else. Uses {@code quantity} only.
 *
 * <p>What shaped it: with its default settings an embedded H2 file loses about half a second of acknowledged commits when
 * the process is killed, so a write on a file answers only after a synced checkpoint; and an append-only ledger means
 * little if the program itself may drop it, so on H2 the pool signs in as a user without any right to change tables.
 */
package wallchart.store;
