package wallchart.audit;

/** Nothing is appended, and so no business act is done, until somebody has looked into a doubt about the ledger. */
public final class LedgerStopped extends RuntimeException {

    private static final long serialVersionUID = 1L;

    LedgerStopped(String reason) {
        super(reason);
    }
}
