/**
 * Who may do what: people with accounts, their sessions, and the tokens of the rooms' workstations.
 *
 * <p>Uses {@code store}, and {@code audit} for the event of every act. {@link wallchart.people.People} is the one class that opens transactions.
 *
 * <p>What shaped it: a room's workstation is used in seconds, with gloves, by whoever stands there, so it shows a token
 * that reads one room; whatever changes a chart has a person behind it. The database keeps hashes only: Argon2id for
 * passwords, SHA-256 for tokens, which are 256 random bits and need no slow hash. Answers are remembered for at most one
 * second, so that what is revoked stops working within a second, on every node.
 */
package wallchart.people;
