package wallchart.audit;

/** What comes of an attempt to go on with a ledger in doubt. */
public sealed interface Reopening {

    /** It goes on; the event says so. */
    record Reopened(Event event) implements Reopening {}

    /** It does not; the text says why, for people. */
    record Refused(String text) implements Reopening {}
}
