package wallchart.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;

/** New, empty databases for tests: H2 in memory, H2 in a file, and a real PostgreSQL started once per test run. */
public final class TestDatabases {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    private TestDatabases() {}

    /** Which database a test runs on. */
    public enum Kind {
        H2,
        POSTGRESQL;

        /** The address of a new, empty database of this kind. */
        public DatabaseSettings settings() {
            return this == H2 ? inMemory() : onPostgres();
        }
    }

    /** A new database in memory; gone when closed. */
    public static DatabaseSettings inMemory() {
        return new DatabaseSettings("jdbc:h2:mem:test" + NUMBER.incrementAndGet(), "wallchart", "owner", 4);
    }

    /** A database in a file of that folder; may be opened again after it was closed. */
    public static DatabaseSettings inFile(Path folder) {
        return new DatabaseSettings("jdbc:h2:file:" + folder.resolve("wallchart"), "wallchart", "owner", 4);
    }

    /**
     * A new, empty schema on the one PostgreSQL of this test run; all that the program sees of it. A database of its own for each
     * test would cost a fifth of a second and a thousand files.
     */
    public static DatabaseSettings onPostgres() {
        var name = "test" + NUMBER.incrementAndGet();
        try (var connection = Server.POSTGRES.getPostgresDatabase().getConnection();
                var create = connection.createStatement()) {
            create.execute("CREATE SCHEMA " + name);
        } catch (SQLException failed) {
            throw new IllegalStateException("cannot create the test schema " + name, failed);
        }
        var url = Server.POSTGRES.getJdbcUrl("postgres", "postgres");
        return new DatabaseSettings(
                url + (url.contains("?") ? "&" : "?") + "currentSchema=" + name, "postgres", "postgres", 4);
    }

    /** Started when first asked for; stops with the process. */
    private static final class Server {

        static final EmbeddedPostgres POSTGRES = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setServerConfig("fsync", "off")
                        .setServerConfig("max_connections", "200")
                        .start();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }
}
