package wallchart.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Jdbi;

/** The tables as their owner holds them, past the program: every row of every table, and whatever else might stand there. */
public final class OwnersTables implements AutoCloseable {

    private final boolean h2;
    private final Connection connection;
    private final Jdbi jdbi;

    /**
     * A column as the database itself describes it.
     *
     * @param scale decimal places of a number
     */
    public record Column(String table, String name, String type, boolean identity, int scale) {
        @Override
        public String toString() {
            return table + "." + name;
        }
    }

    private OwnersTables(DatabaseSettings settings) throws SQLException {
        h2 = settings.url().startsWith("jdbc:h2:");
        connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
        jdbi = Jdbi.create(connection);
        QuantityColumns.register(jdbi);
    }

    /** Of a database that is open already. */
    public static OwnersTables of(DatabaseSettings settings) throws SQLException {
        return new OwnersTables(settings);
    }

    /** The columns of every table, by its name, in the order of the table. */
    public Map<String, List<Column>> columns() throws SQLException {
        var columns = list(
                "SELECT c.table_name, c.column_name, c.data_type, c.is_identity, c.numeric_scale"
                        + " FROM information_schema.columns c JOIN information_schema.tables t"
                        + " ON t.table_schema = c.table_schema AND t.table_name = c.table_name"
                        + " WHERE c.table_schema = CURRENT_SCHEMA AND t.table_type = 'BASE TABLE'"
                        + " ORDER BY c.table_name, c.ordinal_position",
                rows -> new Column(
                        lower(rows.getString(1)),
                        lower(rows.getString(2)),
                        rows.getString(3).toUpperCase(Locale.ROOT),
                        rows.getString(4).equals("YES"),
                        rows.getInt(5)));
        return columns.stream().collect(Collectors.groupingBy(Column::table, LinkedHashMap::new, Collectors.toList()));
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** Takes away everything that the database does against tampering: triggers, constraints, generated numbers. */
    public void unlock() throws SQLException {
        var statements = new ArrayList<String>();
        statements.addAll(list(
                "SELECT DISTINCT trigger_name, event_object_table FROM information_schema.triggers"
                        + " WHERE event_object_schema = CURRENT_SCHEMA",
                rows -> "DROP TRIGGER " + rows.getString(1) + (h2 ? "" : " ON " + rows.getString(2))));
        statements.addAll(list(
                "SELECT table_name, constraint_name FROM information_schema.table_constraints"
                        + " WHERE table_schema = CURRENT_SCHEMA AND LOWER(table_name) <> 'flyway_schema_history'"
                        + " AND LOWER(constraint_name) NOT LIKE '%\\_not\\_null'"
                        + " ORDER BY CASE constraint_type WHEN 'FOREIGN KEY' THEN 0 ELSE 1 END",
                rows -> "ALTER TABLE " + rows.getString(1) + " DROP CONSTRAINT " + rows.getString(2)));
        columns().values().stream()
                .flatMap(List::stream)
                .filter(column -> !column.table().equals("flyway_schema_history"))
                .forEach(column -> {
                    var alter = "ALTER TABLE " + column.table() + " ALTER COLUMN " + column.name();
                    if (column.identity()) {
                        statements.add(alter + " DROP IDENTITY");
                    }
                    statements.add(alter + " DROP NOT NULL");
                });
        try (var statement = connection.createStatement()) {
            for (var each : statements) {
                statement.execute(each);
            }
        }
    }

    /** Every row of those tables, in no order. */
    public Map<String, List<List<Object>>> read(Map<String, List<Column>> tables) throws SQLException {
        var contents = new LinkedHashMap<String, List<List<Object>>>();
        for (var table : tables.entrySet()) {
            contents.put(table.getKey(), list("SELECT " + names(table.getValue()) + " FROM " + table.getKey(), rows -> {
                var values = new ArrayList<>();
                for (int i = 0; i < table.getValue().size(); i++) {
                    values.add(value(rows, i + 1, table.getValue().get(i)));
                }
                return values;
            }));
        }
        return contents;
    }

    private static Object value(ResultSet rows, int position, Column column) throws SQLException {
        return switch (column.type()) {
            case "TIMESTAMP WITH TIME ZONE" -> rows.getObject(position, OffsetDateTime.class);
            case "DATE" -> rows.getObject(position, LocalDate.class);
            default -> rows.getObject(position);
        };
    }

    private static String names(List<Column> columns) {
        return columns.stream().map(Column::name).collect(Collectors.joining(", "));
    }

    /**
     * Puts other rows into tables, looks, and takes it all back.
     *
     * @throws SQLException if the database does not take them
     */
    public <T> T undone(
            Map<String, List<Column>> tables, Map<String, List<List<Object>>> others, Function<ReadTx, T> looking)
            throws SQLException {
        connection.setAutoCommit(false);
        try {
            for (var table : others.entrySet()) {
                replace(table.getKey(), tables.get(table.getKey()), table.getValue());
            }
            try (var handle = jdbi.open()) {
                return looking.apply(new ReadTx(handle, Instant.EPOCH));
            }
        } finally {
            connection.rollback();
            connection.setAutoCommit(true);
        }
    }

    private void replace(String table, List<Column> columns, List<List<Object>> rows) throws SQLException {
        try (Statement delete = connection.createStatement()) {
            delete.execute("DELETE FROM " + table);
        }
        var marks = Stream.generate(() -> "?").limit(columns.size()).collect(Collectors.joining(", "));
        try (var insert = connection.prepareStatement(
                "INSERT INTO " + table + " (" + names(columns) + ") VALUES (" + marks + ")")) {
            for (var row : rows) {
                for (int i = 0; i < row.size(); i++) {
                    if (row.get(i) == null) {
                        insert.setNull(i + 1, Types.NULL);
                    } else {
                        insert.setObject(i + 1, row.get(i));
                    }
                }
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    private interface Reading<T> {
        T of(ResultSet rows) throws SQLException;
    }

    private <T> List<T> list(String query, Reading<? extends T> reading) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(query)) {
            var list = new ArrayList<T>();
            while (rows.next()) {
                list.add(reading.of(rows));
            }
            return list;
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
