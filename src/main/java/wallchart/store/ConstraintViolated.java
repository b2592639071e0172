package wallchart.store;

/**
 * A named constraint of a table refused a write, so nothing was written: a name already taken, a number another signature
 * took first. Catch it around {@link Database#write}, not inside: the transaction is over.
 */
public final class ConstraintViolated extends StoreException {

    private static final long serialVersionUID = 1;

    private final String constraint;

    ConstraintViolated(String constraint, Throwable cause) {
        super(Kind.CONSTRAINT, "refused by the rule " + (constraint.isEmpty() ? "of a column" : constraint), cause);
        this.constraint = constraint;
    }

    /** The name given in the migration, in lower case; empty where the database does not tell (a column that is null). */
    public String constraint() {
        return constraint;
    }
}
