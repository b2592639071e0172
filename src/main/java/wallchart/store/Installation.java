package wallchart.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/** Whether a database is a demonstration or a site's: read before anything is written, written once. */
final class Installation {

    private Installation() {}

    /**
     * Refuses a database that was made for the other mode; changes nothing.
     *
     * @throws StoreException naming both modes
     */
    static void requireSameOrNone(Connection connection, Mode asked, String url) throws SQLException {
        var found = find(connection);
        if (found.isPresent() && found.get() != asked) {
            throw StoreException.cannotOpen(
                    "database " + url + " was made as a " + found.get().slug() + " and cannot be opened as a "
                            + asked.slug() + ": name another database, or start it as a "
                            + found.get().slug(),
                    null);
        }
    }

    /** Writes the mode into a database that has none yet. */
    static void claim(Connection connection, Mode asked, Instant at, String url) throws SQLException {
        if (find(connection).isEmpty()) {
            try (var insert = connection.prepareStatement(
                    "INSERT INTO installation (only_row, mode, created_at) VALUES (1, ?, ?)")) {
                insert.setString(1, asked.slug());
                insert.setObject(2, at.atOffset(ZoneOffset.UTC));
                insert.executeUpdate();
            } catch (SQLException raced) {
                if (!"23505".equals(raced.getSQLState())) {
                    throw raced;
                }
            }
        }
        requireSameOrNone(connection, asked, url); // another node may have been first
    }

    private static Optional<Mode> find(Connection connection) throws SQLException {
        return hasTable(connection) ? readRow(connection) : Optional.empty();
    }

    private static boolean hasTable(Connection connection) throws SQLException {
        try (var query = connection.createStatement();
                var rows = query.executeQuery("SELECT COUNT(*) FROM information_schema.tables"
                        + " WHERE LOWER(table_name) = 'installation' AND table_schema = CURRENT_SCHEMA")) {
            return rows.next() && rows.getInt(1) > 0;
        }
    }

    private static Optional<Mode> readRow(Connection connection) throws SQLException {
        try (var query = connection.createStatement();
                var rows = query.executeQuery("SELECT mode FROM installation")) {
            return rows.next() ? Optional.of(Mode.ofSlug(rows.getString(1))) : Optional.empty();
        }
    }
}
