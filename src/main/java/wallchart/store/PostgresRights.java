package wallchart.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * What the role that serves requests may do in a PostgreSQL database: rows of our tables, and of append-only tables only new ones. The
 * role cannot sign in by itself; the pool takes it on as it connects, so that the owner's rights serve for migrations alone.
 */
final class PostgresRights {

    static final String APPLICATION = "wallchart_app";

    private static final String NOT_ALLOWED = "42501";

    /** Any number of our own: two nodes that start at once take turns. */
    private static final int ONE_AT_A_TIME = 20_260_302;

    private PostgresRights() {}

    /**
     * Gives the role exactly its rights, and makes it where there is none.
     *
     * @throws StoreException of kind {@code CANNOT_OPEN} where the owner may not, with what the database's administrator has to do
     */
    static void renew(Connection owner) throws SQLException {
        owner.setAutoCommit(false); // nodes that serve already lose no right for a moment
        execute(owner, "SELECT pg_advisory_xact_lock(" + ONE_AT_A_TIME + ")");
        try {
            makeRole(owner);
        } catch (SQLException refused) {
            if (NOT_ALLOWED.equals(refused.getSQLState())) {
                throw missing(owner, refused);
            }
            throw refused;
        }
        for (var grant : grants(owner)) {
            execute(owner, grant);
        }
        owner.commit();
    }

    private static void makeRole(Connection owner) throws SQLException {
        if (!isTrue(owner, "SELECT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = '" + APPLICATION + "')")) {
            execute(owner, "CREATE ROLE " + APPLICATION + " NOLOGIN");
        }
        if (!isTrue(owner, "SELECT pg_has_role(current_user, '" + APPLICATION + "', 'MEMBER')")) {
            execute(owner, "GRANT " + APPLICATION + " TO CURRENT_USER");
        }
    }

    private static StoreException missing(Connection owner, SQLException refused) throws SQLException {
        var user = owner.getMetaData().getUserName();
        return StoreException.cannotOpen(
                "the role " + APPLICATION + " that serves requests is not there for " + user
                        + ": let the database's administrator run CREATE ROLE " + APPLICATION + " NOLOGIN and GRANT "
                        + APPLICATION + " TO " + user,
                refused);
    }

    private static List<String> grants(Connection owner) throws SQLException {
        var grants = new ArrayList<String>();
        try (var query = owner.createStatement();
                var rows = query.executeQuery(
                        "SELECT quote_ident(current_schema()), quote_ident(relname), relkind::text,"
                                + " COALESCE(obj_description(pg_class.oid, 'pg_class'), '')"
                                + " FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace"
                                + " WHERE nspname = current_schema() AND relkind IN ('r', 'v') AND relname <> 'flyway_schema_history' ORDER BY relname")) {
            while (rows.next()) {
                var schema = rows.getString(1);
                var table = schema + "." + rows.getString(2);
                if (grants.isEmpty()) {
                    grants.add("GRANT USAGE ON SCHEMA " + schema + " TO " + APPLICATION);
                }
                grants.add("REVOKE ALL ON " + table + " FROM " + APPLICATION);
                grants.add("GRANT " + TableRights.of(rows.getString(3).equals("r"), rows.getString(4)) + " ON " + table
                        + " TO " + APPLICATION);
            }
        }
        return grants;
    }

    private static boolean isTrue(Connection owner, String question) throws SQLException {
        try (var query = owner.createStatement();
                var rows = query.executeQuery(question)) {
            return rows.next() && rows.getBoolean(1);
        }
    }

    private static void execute(Connection owner, String statement) throws SQLException {
        try (var execution = owner.createStatement()) {
            execution.execute(statement);
        }
    }
}
