package wallchart;

import org.slf4j.LoggerFactory;
import wallchart.audit.LedgerStopped;
import wallchart.store.StoreException;
import wallchart.web.PortInUse;

/** How a command that cannot go on says so: one line with the reason and the next step. */
final class Refusals {

    /** A command refuses; the message is for people. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String message) {
            super(message);
        }
    }

    private Refusals() {}

    static String oneLine(Throwable failure) {
        boolean expected = failure instanceof Refused
                || failure instanceof BadSettings
                || failure instanceof StoreException
                || failure instanceof LedgerStopped
                || failure instanceof PortInUse;
        if (!expected) {
            LoggerFactory.getLogger(Main.class).error("the command failed", failure);
        }
        var message = String.valueOf(failure.getMessage()).lines().findFirst().orElse("");
        return expected ? message : "failed unexpectedly (" + failure.getClass().getSimpleName() + "): " + message;
    }
}
