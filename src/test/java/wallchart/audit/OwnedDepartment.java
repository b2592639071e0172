package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;
import wallchart.store.OwnersTables;
import wallchart.store.OwnersTables.Column;
import wallchart.store.SettableClock;

/** A department with a history, its checkpoints, and all its tables in the hand of their owner, who has unlocked them. */
final class OwnedDepartment implements AutoCloseable {

    private static final int ACTS = 54;
    private static final int ACTS_BETWEEN_COPIES = 12;
    private static final int FEWEST_ROWS = 3;
    /**
     * Tables that prove nothing about what was signed, who may sign, or what was told. To cover one of them: a check in
     * UntouchedRecordsTest.ALL_RECORDS, an act in VariedDepartment that leaves some rows there, and its line here goes.
     */
    private static final Map<String, String> NOT_COVERED = Map.of(
            "audit_turn", "operational: one row that is locked while an event is appended, and why the ledger stopped",
            "sign_in_session", "operational: who is signed in now; it is worth nothing after a day",
            "installation", "one row that refuses a demonstration's database to a site; a site's events are not in it",
            "flyway_schema_history", "the migration's own; it is compared with the migrations at every start");

    private final Database database;
    private final OwnersTables owner;
    private final Checkpoints checkpoints;
    private final Map<String, List<Column>> tables;
    private final List<TableContents> older = new ArrayList<>();
    private final TableContents untouched;

    OwnedDepartment(DatabaseSettings settings, Path folder, Random random) throws SQLException {
        var clock = SettableClock.at("2026-03-02T08:00:00Z");
        database = Database.open(settings, Mode.SITE, clock);
        owner = OwnersTables.of(settings);
        checkpoints = new Checkpoints(folder);
        tables = new LinkedHashMap<>(owner.columns());
        assertThat(tables).containsKeys(NOT_COVERED.keySet().toArray(String[]::new));
        tables.keySet().removeAll(NOT_COVERED.keySet());
        live(clock, random);
        untouched = older.remove(older.size() - 1);
        tables.keySet()
                .forEach(table -> assertThat(untouched.rows(table)).as(table).hasSizeGreaterThanOrEqualTo(FEWEST_ROWS));
        owner.unlock();
    }

    private void live(SettableClock clock, Random random) throws SQLException {
        var trail = new AuditTrail(database, checkpoints, UntouchedRecordsTest.ALL_RECORDS);
        var department = new VariedDepartment(database, clock, random, trail);
        for (int act = 1; act <= ACTS; act++) {
            department.act();
            if (act % ACTS_BETWEEN_COPIES == 0) {
                var sound = (Verification.Sound) trail.verify();
                checkpoints.add(sound.events(), sound.head(), clock.instant());
                older.add(new TableContents(tables, owner.read(tables)));
            }
        }
    }

    /** What stands in the tables. */
    TableContents untouched() {
        return untouched;
    }

    /** What stood there at earlier times. */
    List<TableContents> older() {
        return older;
    }

    List<Column> columns() {
        return tables.values().stream().flatMap(List::stream).toList();
    }

    /**
     * What the check finds while these rows stand in those tables.
     *
     * @throws SQLException if the database does not take them
     */
    Verification look(LedgerCheck check, Map<String, List<List<Object>>> others) throws SQLException {
        return owner.undone(tables, others, tx -> check.verify(tx, checkpoints));
    }

    @Override
    public void close() throws SQLException {
        owner.close();
        database.close();
    }
}
