package wallchart.audit;

/** What came of re-deriving the ledger from its rows. */
public sealed interface Verification {

    /**
     * Every event stands where it was entered and says what it said then.
     *
     * @param events how many there are
     * @param head the hash of the last; {@link Event#NONE_BEFORE} where there is none
     */
    record Sound(long events, String head) implements Verification {}

    /**
     * Somebody, or something, changed the ledger.
     *
     * @param seq of the first event that cannot be trusted; nothing after it can be either
     * @param what is wrong with it, for people
     */
    record Doubtful(long seq, String what) implements Verification {}
}
