package wallchart;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.Driver;
import java.sql.DriverPropertyInfo;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import java.util.logging.Logger;

/** H2 with the write delay that it has by itself, and deaf to the order to sync. */
final class CarelessDriver implements Driver {

    private static final String CAREFUL = "WRITE_DELAY=0";
    private static final String DEFAULT_OF_H2 = "WRITE_DELAY=500";
    private static final String SYNC = "CHECKPOINT SYNC";

    private final Driver h2;

    CarelessDriver(Driver h2) {
        this.h2 = h2;
    }

    @Override
    public Connection connect(String url, Properties info) throws SQLException {
        var connection = h2.connect(url.replace(CAREFUL, DEFAULT_OF_H2), info);
        return connection != null && url.contains(CAREFUL) ? deaf(connection) : connection;
    }

    private static Connection deaf(Connection connection) {
        return proxy(Connection.class, (proxy, method, arguments) -> {
            var result = invoke(() -> method.invoke(connection, arguments));
            return method.getName().equals("createStatement") ? deaf((Statement) result) : result;
        });
    }

    private static Statement deaf(Statement statement) {
        return proxy(
                Statement.class,
                (proxy, method, arguments) -> method.getName().equals("execute") && SYNC.equals(arguments[0])
                        ? false
                        : invoke(() -> method.invoke(statement, arguments)));
    }

    private static <T> T proxy(Class<T> type, InvocationHandler handler) {
        return type.cast(Proxy.newProxyInstance(CarelessDriver.class.getClassLoader(), new Class<?>[] {type}, handler));
    }

    private interface Call {
        Object run() throws ReflectiveOperationException;
    }

    private static Object invoke(Call call) throws Throwable {
        try {
            return call.run();
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        }
    }

    @Override
    public boolean acceptsURL(String url) throws SQLException {
        return h2.acceptsURL(url);
    }

    @Override
    public DriverPropertyInfo[] getPropertyInfo(String url, Properties info) throws SQLException {
        return h2.getPropertyInfo(url, info);
    }

    @Override
    public int getMajorVersion() {
        return h2.getMajorVersion();
    }

    @Override
    public int getMinorVersion() {
        return h2.getMinorVersion();
    }

    @Override
    public boolean jdbcCompliant() {
        return h2.jdbcCompliant();
    }

    @Override
    public Logger getParentLogger() {
        return Logger.getLogger("wallchart");
    }
}
