package wallchart.store;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;

/**
 * Makes a table of an H2 database append-only: name it in a migration as {@code CREATE TRIGGER … BEFORE UPDATE, DELETE ON …
 * FOR EACH ROW CALL 'wallchart.store.RefuseChange'}. PostgreSQL has the function {@code refuse_change()} for the same.
 */
public final class RefuseChange implements Trigger {

    private String table = "";

    @Override
    public void init(Connection connection, String schema, String trigger, String tableName, boolean before, int type) {
        table = tableName;
    }

    @Override
    public void fire(Connection connection, Object[] before, Object[] after) throws SQLException {
        throw new SQLException("rows of " + table + " are never changed or removed", "55000");
    }
}
