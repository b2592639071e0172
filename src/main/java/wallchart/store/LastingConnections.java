package wallchart.store;

import java.io.PrintWriter;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;

/**
 * Connections of the owner that stay open until the database closes, although whoever borrowed one closed it.
 *
 * <p>H2 2.4.240 compares the constants of {@code CHECK (mode IN ('demo', 'site'))} through the session that created the
 * table: once that session is closed, every insert fails with "check constraint invalid" until the file is opened anew.
 */
final class LastingConnections implements DataSource {

    private final JdbcDataSource source = new JdbcDataSource();
    private final List<Connection> opened = new ArrayList<>();

    LastingConnections(DatabaseSettings settings) {
        source.setURL(settings.url());
        source.setUser(settings.user());
        source.setPassword(settings.password());
    }

    @Override
    public synchronized Connection getConnection() throws SQLException {
        var connection = source.getConnection();
        opened.add(connection);
        return (Connection) Proxy.newProxyInstance(
                getClass().getClassLoader(), new Class<?>[] {Connection.class}, withoutClosing(connection));
    }

    synchronized void closeAll() throws SQLException {
        for (var connection : opened) {
            connection.close();
        }
        opened.clear();
    }

    private static InvocationHandler withoutClosing(Connection connection) {
        return (proxy, method, arguments) -> {
            if (method.getName().equals("close")) {
                endTransaction(connection);
                return null;
            }
            try {
                return method.invoke(connection, arguments);
            } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
            }
        };
    }

    /** As closing would: what was not committed is undone, and no lock stays behind. */
    private static void endTransaction(Connection connection) throws SQLException {
        if (!connection.isClosed() && !connection.getAutoCommit()) {
            connection.rollback();
            connection.setAutoCommit(true);
        }
    }

    @Override
    public Connection getConnection(String user, String password) throws SQLException {
        throw new SQLFeatureNotSupportedException("the owner is the only user here");
    }

    @Override
    public PrintWriter getLogWriter() {
        return source.getLogWriter();
    }

    @Override
    public void setLogWriter(PrintWriter out) {
        source.setLogWriter(out);
    }

    @Override
    public void setLoginTimeout(int seconds) {
        source.setLoginTimeout(seconds);
    }

    @Override
    public int getLoginTimeout() {
        return source.getLoginTimeout();
    }

    @Override
    public Logger getParentLogger() throws SQLFeatureNotSupportedException {
        throw new SQLFeatureNotSupportedException();
    }

    @Override
    public <T> T unwrap(Class<T> type) throws SQLException {
        return source.unwrap(type);
    }

    @Override
    public boolean isWrapperFor(Class<?> type) throws SQLException {
        return source.isWrapperFor(type);
    }
}
