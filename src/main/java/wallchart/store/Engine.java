package wallchart.store;

import java.sql.SQLException;
import java.util.function.Supplier;
import javax.sql.DataSource;

/** What the two databases do differently: how they are opened, who may do what, and when a commit is safe on disk. */
sealed interface Engine extends AutoCloseable permits H2Engine, PostgresEngine {

    /** Opens the engine named by the address; no pool yet. */
    static Engine open(DatabaseSettings settings) {
        if (settings.url().startsWith("jdbc:h2:")) {
            return H2Engine.open(settings);
        }
        if (settings.url().startsWith("jdbc:postgresql:")) {
            return new PostgresEngine(settings);
        }
        throw StoreException.cannotOpen(
                "database address \"" + settings.url()
                        + "\" is neither jdbc:h2:file:, jdbc:h2:mem: nor jdbc:postgresql:",
                null);
    }

    /** The folder of its own migrations. */
    String dialect();

    /** Connections of the owner of the tables, for migrations only. */
    DataSource owner();

    /** The pool that serves requests; called once, after the migrations. */
    DataSource openPool() throws SQLException;

    /** The JDBC isolation level at which a transaction sees one state of all tables together. */
    int oneState();

    /** Does a write, its commit and its {@link #makeDurable} included, when it may begin. */
    <T> T inTurn(Supplier<T> write);

    /** Returns once everything committed so far survives the death of the process. */
    void makeDurable() throws SQLException;

    @Override
    void close();
}
