package wallchart.store;

/** What a store may answer. */
public final class StoreFixtures {

    private StoreFixtures() {}

    /** As thrown while the database does not answer. */
    public static StoreException databaseAway() {
        return new StoreException(StoreException.Kind.UNAVAILABLE, "the database is away", null);
    }
}
