package wallchart.architecture.planted.technique;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;

/** Planted: a rule that asks the wall clock and the database. The architecture test must notice both. */
public final class AsksTheClock {

    public Instant when() {
        return Instant.now();
    }

    public boolean open(Connection connection) throws SQLException {
        return !connection.isClosed();
    }
}
