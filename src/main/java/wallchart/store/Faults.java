package wallchart.store;

import java.sql.SQLException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jdbi.v3.core.ConnectionException;
import org.postgresql.util.PSQLException;
import wallchart.store.StoreException.Kind;

/** Turns what the drivers throw into one of ours, by SQL state and vendor code, so that no driver type leaves the package. */
final class Faults {

    /** H2: file not readable or writable, connection broken, database closed or closing. */
    private static final Set<Integer> H2_AWAY = Set.of(90028, 90030, 90031, 90067, 90098, 90121);
    /** Serialization failure and deadlock; H2 reports a lock timeout as HYT00. */
    private static final Set<String> IN_THE_WAY = Set.of("40001", "40P01", "55P03", "HYT00");
    /** H2 writes {@code "PUBLIC.NAME INDEX …"}, for a unique index {@code "PUBLIC.NAME ON …"}, else {@code "NAME: …"}. */
    private static final Pattern H2_NAME = Pattern.compile("\"(?:PUBLIC\\.)?(\\w+)(?: INDEX | ON |: )");

    private Faults() {}

    static StoreException translate(Throwable thrown) {
        var sql = sqlCause(thrown);
        if (sql == null) {
            return new StoreException(Kind.FAULT, "the database call failed: this is a fault of the program", thrown);
        }
        var state = sql.getSQLState() == null ? "" : sql.getSQLState();
        if (state.startsWith("23")) {
            return new ConstraintViolated(constraint(sql), thrown);
        }
        if (IN_THE_WAY.contains(state)) {
            return new StoreException(Kind.CONFLICT, "another write was in the way: try again", thrown);
        }
        if (thrown instanceof ConnectionException || isAway(sql, state)) {
            return new StoreException(Kind.UNAVAILABLE, "the database does not answer: try again shortly", thrown);
        }
        return new StoreException(Kind.FAULT, "the database refused a statement (" + state + ")", thrown);
    }

    static SQLException sqlCause(Throwable thrown) {
        for (var cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                return sql;
            }
        }
        return null;
    }

    private static boolean isAway(SQLException sql, String state) {
        return state.startsWith("08")
                || state.startsWith("53")
                || state.startsWith("57P")
                || H2_AWAY.contains(sql.getErrorCode());
    }

    private static String constraint(SQLException sql) {
        if (sql instanceof PSQLException postgres && postgres.getServerErrorMessage() != null) {
            var name = postgres.getServerErrorMessage().getConstraint();
            return name == null ? "" : name;
        }
        var named = H2_NAME.matcher(sql.getMessage());
        return named.find() ? named.group(1).toLowerCase(Locale.ROOT) : "";
    }
}
