package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.audit.Tampering.Kind;
import wallchart.store.OwnersTables.Column;
import wallchart.store.TestDatabases;

/**
 * Whoever has the owner's password can change every table; the ledger's check shows it, whatever they change. The tables and their
 * columns are those that the database itself lists: a new one is tampered with from the day on which it is there.
 */
class TamperedRecordsTest {

    private static final int ON_H2 = 2_000;
    private static final int ON_POSTGRESQL = 200;
    private static final int MOST_TRIES = 100;
    private static final int TRIES_OF_A_COLUMN = 50;
    private static final LedgerCheck CHECK = new LedgerCheck(UntouchedRecordsTest.ALL_RECORDS);

    /** How often each kind is drawn. */
    private static final List<Kind> KINDS = List.of(
            Kind.CHANGED_COLUMN,
            Kind.CHANGED_COLUMN,
            Kind.CHANGED_COLUMN,
            Kind.CHANGED_COLUMN,
            Kind.FLIPPED_BIT,
            Kind.FLIPPED_BIT,
            Kind.SWAPPED_VALUES,
            Kind.SWAPPED_VALUES,
            Kind.DELETED_ROW,
            Kind.INSERTED_ROW,
            Kind.DUPLICATED_ROW,
            Kind.DATED_BACK,
            Kind.CUT_TAIL,
            Kind.REWRITTEN_CHAIN,
            Kind.MOVED_SIGNATURE,
            Kind.OLDER_COPY);

    @TempDir
    private Path folder;

    private final Random random = new Random(20_261_125);
    private final Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    private final Set<String> changedColumns = new TreeSet<>();

    @Test
    void two_thousand_random_tamperings_are_found() throws SQLException {
        try (var department = new OwnedDepartment(TestDatabases.inMemory(), folder, random)) {
            tamper(department, ON_H2);
            assertThat(changedColumns)
                    .containsAll(
                            department.columns().stream().map(Column::toString).toList());
        }
    }

    @Test
    void two_hundred_random_tamperings_are_found_on_postgresql() throws SQLException {
        try (var department = new OwnedDepartment(TestDatabases.onPostgres(), folder, random)) {
            tamper(department, ON_POSTGRESQL);
        }
    }

    /** The guard of the guard: where one kind of record is not held against its events, some tampering passes. */
    @Test
    void without_any_one_of_its_checks_a_tampering_would_pass() throws SQLException {
        try (var department = new OwnedDepartment(TestDatabases.inMemory(), folder, random)) {
            for (var left : UntouchedRecordsTest.ALL_RECORDS) {
                var others = new ArrayList<>(UntouchedRecordsTest.ALL_RECORDS);
                others.remove(left);
                assertThat(somethingPasses(department, new LedgerCheck(others)))
                        .as("without " + left)
                        .isTrue();
            }
        }
    }

    private boolean somethingPasses(OwnedDepartment department, LedgerCheck check) throws SQLException {
        var tampering = new Tampering(department.untouched(), department.older(), random);
        for (var column : department.columns()) {
            var others = department.untouched().differentIn(tampering.of(Kind.FLIPPED_BIT, column));
            if (!others.isEmpty() && department.look(check, others) instanceof Verification.Sound) {
                return true;
            }
        }
        return false;
    }

    private void tamper(OwnedDepartment department, int tamperings) throws SQLException {
        assertThat(department.look(CHECK, Map.of())).isInstanceOf(Verification.Sound.class);
        for (int i = 0; i < tamperings; i++) {
            one(department, i);
        }
        assertThat(department.look(CHECK, Map.of())).isInstanceOf(Verification.Sound.class);
        assertThat(kinds).containsExactly(Kind.values());
    }

    /** Draws until something is changed that the database takes. */
    private void one(OwnedDepartment department, int number) throws SQLException {
        var kind = KINDS.get(number % KINDS.size());
        var tampering = new Tampering(department.untouched(), department.older(), random);
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            var column = column(department.columns(), kind, number, tries);
            var others = department.untouched().differentIn(tampering.of(kind, column));
            if (!others.isEmpty() && isFound(department, kind + " of " + column, others)) {
                kinds.add(kind);
                if (kind == Kind.CHANGED_COLUMN) {
                    changedColumns.add(column.toString());
                }
                return;
            }
        }
        throw new AssertionError(kind + " changed nothing in " + MOST_TRIES + " tries");
    }

    /** One column after the other where a column is what is changed, any of them where it is not. */
    private Column column(List<Column> columns, Kind kind, int number, int tries) {
        int inTurn = number / KINDS.size() * 4 + number % KINDS.size() + tries / TRIES_OF_A_COLUMN;
        return columns.get(kind == Kind.CHANGED_COLUMN ? inTurn % columns.size() : random.nextInt(columns.size()));
    }

    /** Fails where it is not found; false where the database does not take it, such as a text that is too long for its column. */
    private static boolean isFound(OwnedDepartment department, String what, Map<String, List<List<Object>>> others) {
        try {
            assertThat(department.look(CHECK, others))
                    .as(() -> what + ": " + difference(department.untouched(), others))
                    .isInstanceOf(Verification.Doubtful.class);
            return true;
        } catch (SQLException refused) {
            return false;
        }
    }

    private static String difference(TableContents untouched, Map<String, List<List<Object>>> others) {
        var words = new StringBuilder();
        others.forEach((table, rows) -> {
            var before = new ArrayList<>(untouched.rows(table));
            var after = new ArrayList<>(rows);
            after.removeAll(untouched.rows(table));
            before.removeAll(rows);
            words.append(table).append(": ").append(before).append(" became ").append(after);
        });
        return words.toString();
    }
}
