package wallchart.store;

import java.sql.SQLException;

/** What a store may answer, and what may be done to it. */
public final class StoreFixtures {

    private StoreFixtures() {}

    /** What somebody with the owner's password could do, past the program and its rights. */
    public static void asOwner(Database database, String... statements) {
        try (var connection = database.engine().owner().getConnection();
                var statement = connection.createStatement()) {
            for (var each : statements) {
                statement.execute(each);
            }
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** As thrown while the database does not answer. */
    public static StoreException databaseAway() {
        return new StoreException(StoreException.Kind.UNAVAILABLE, "the database is away", null);
    }
}
