package wallchart.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;

/** How many connections, and how long anybody waits for one. */
final class Pools {

    /** Longer than any healthy transaction, shorter than a person's patience at a console. */
    private static final int WAIT_FOR_CONNECTION_MS = 3_000;

    private static final int WAIT_FOR_LIFE_SIGN_MS = 1_000;

    private Pools() {}

    static HikariConfig config(String url, String user, String password, int size) {
        var config = new HikariConfig();
        config.setPoolName("wallchart");
        config.setJdbcUrl(url);
        config.setUsername(user);
        config.setPassword(password);
        config.setMaximumPoolSize(size);
        config.setConnectionTimeout(WAIT_FOR_CONNECTION_MS);
        config.setValidationTimeout(WAIT_FOR_LIFE_SIGN_MS);
        config.setInitializationFailTimeout(WAIT_FOR_CONNECTION_MS);
        config.setTransactionIsolation("TRANSACTION_READ_COMMITTED");
        return config;
    }

    static HikariDataSource open(HikariConfig config) {
        return new HikariDataSource(config);
    }
}
