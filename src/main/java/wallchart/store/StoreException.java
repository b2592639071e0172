package wallchart.store;

import org.jdbi.v3.core.JdbiException;

/** The database cannot do what was asked. The message is one line for people: what, where, the next step; no SQL. */
public class StoreException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** What kind of trouble it is, for whoever answers the caller. */
    public enum Kind {
        /** The database cannot be opened at all; the program should not start. */
        CANNOT_OPEN,
        /** It is away for now; later may work. What was being written may or may not have been kept. */
        UNAVAILABLE,
        /** Another write was in the way and nothing was written; trying again may work. */
        CONFLICT,
        /** A rule of a table refused it and nothing was written: see {@link ConstraintViolated}. */
        CONSTRAINT,
        /** Our own mistake: nested transactions, SQL the database does not take. */
        FAULT
    }

    private final Kind kind;

    StoreException(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    static StoreException cannotOpen(String message, Throwable cause) {
        return new StoreException(Kind.CANNOT_OPEN, message, cause);
    }

    /** Whether the database itself failed, inside a transaction or outside, and not whoever read its rows. */
    public static boolean isOfDatabase(RuntimeException thrown) {
        return thrown instanceof StoreException || thrown instanceof JdbiException;
    }

    public final Kind kind() {
        return kind;
    }
}
