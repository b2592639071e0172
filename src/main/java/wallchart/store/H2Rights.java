package wallchart.store;

import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;

/** What the application's user may do in an H2 database: rows of our tables, and of append-only tables only new ones. */
final class H2Rights {

    static final String APPLICATION = "WALLCHART_APP";

    private H2Rights() {}

    /** Whether a pool of ours is connected already. */
    static boolean isServing(Connection owner) throws SQLException {
        try (var query = owner.createStatement();
                var rows = query.executeQuery(
                        "SELECT COUNT(*) FROM information_schema.sessions WHERE user_name = '" + APPLICATION + "'")) {
            return rows.next() && rows.getInt(1) > 0;
        }
    }

    /** Gives the application's user a new random password and exactly its rights; returns the password. */
    static String renew(Connection owner) throws SQLException {
        var password = randomPassword();
        try (var statement = owner.createStatement()) {
            statement.execute("CREATE USER IF NOT EXISTS " + APPLICATION + " PASSWORD '" + password + "'");
            statement.execute("ALTER USER " + APPLICATION + " SET PASSWORD '" + password + "'");
            statement.execute("ALTER USER " + APPLICATION + " ADMIN FALSE");
        }
        grant(owner);
        return password;
    }

    private static void grant(Connection owner) throws SQLException {
        var grants = new ArrayList<String>();
        try (var query = owner.createStatement();
                var rows = query.executeQuery("SELECT table_name, table_type, COALESCE(remarks, '')"
                        + " FROM information_schema.tables"
                        + " WHERE table_schema = 'PUBLIC' AND table_name <> 'flyway_schema_history'")) {
            while (rows.next()) {
                grants.add("REVOKE ALL ON \"" + rows.getString(1) + "\" FROM " + APPLICATION);
                grants.add("GRANT " + TableRights.of(rows.getString(2).equals("BASE TABLE"), rows.getString(3))
                        + " ON \"" + rows.getString(1) + "\" TO " + APPLICATION);
            }
        }
        try (var statement = owner.createStatement()) {
            for (var grant : grants) {
                statement.execute(grant);
            }
        }
    }

    private static String randomPassword() {
        var bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
