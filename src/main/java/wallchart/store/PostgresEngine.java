package wallchart.store;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * PostgreSQL: the owner migrates, the pool serves requests under a role that may not change what is append-only; the server itself
 * syncs each commit.
 */
final class PostgresEngine implements Engine {

    /** A server that vanished without closing its connections must not hold a request for ever. */
    private static final String SECONDS_WITHOUT_AN_ANSWER = "30";

    private static final int SECONDS_TO_CONNECT = 3;

    private final DatabaseSettings settings;
    private HikariDataSource pool;

    PostgresEngine(DatabaseSettings settings) {
        this.settings = settings;
    }

    @Override
    public String dialect() {
        return "postgresql";
    }

    @Override
    public DataSource owner() {
        var owner = new PGSimpleDataSource();
        owner.setUrl(settings.url());
        owner.setUser(settings.user());
        owner.setPassword(settings.password());
        owner.setConnectTimeout(SECONDS_TO_CONNECT);
        return owner;
    }

    @Override
    public DataSource openPool() throws SQLException {
        try (var owner = owner().getConnection()) {
            PostgresRights.renew(owner);
        }
        var config = Pools.config(settings.url(), settings.user(), settings.password(), settings.poolSize());
        config.addDataSourceProperty("connectTimeout", String.valueOf(SECONDS_TO_CONNECT));
        config.addDataSourceProperty("socketTimeout", SECONDS_WITHOUT_AN_ANSWER);
        config.addDataSourceProperty("tcpKeepAlive", "true");
        config.addDataSourceProperty("ApplicationName", "wallchart");
        config.addDataSourceProperty("options", "-c role=" + PostgresRights.APPLICATION);
        pool = Pools.open(config);
        return pool;
    }

    @Override
    public int oneState() {
        return Connection.TRANSACTION_REPEATABLE_READ;
    }

    @Override
    public <T> T inTurn(Supplier<T> write) {
        return write.get();
    }

    @Override
    public void makeDurable() {
        // synchronous_commit is on by default: a commit that returned is on disk
    }

    @Override
    public void close() {
        if (pool != null) {
            pool.close();
        }
    }
}
