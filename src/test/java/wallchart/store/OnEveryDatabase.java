package wallchart.store;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A test class that extends this runs twice, on H2 and on PostgreSQL, with the same sentences:
 *
 * <pre>{@code
 * class ChartsTest extends OnEveryDatabase {
 *     @Test
 *     void a_published_version_is_found_again() {
 *         var charts = new Charts(database());
 *         clock().advance(Duration.ofDays(1));
 *         …
 *     }
 * }
 * }</pre>
 *
 * <p>Each test method has a database of its own, migrated and otherwise empty, made as a site, and a clock standing at {@link
 * #START}. {@link #database(Mode)} makes another one for the same method; all are closed after it.
 */
@ParameterizedClass(name = "on {0}")
@EnumSource(TestDatabases.Kind.class)
public abstract class OnEveryDatabase {

    /** Where the clock stands when a test begins: a Monday, eight in the morning. */
    public static final String START = "2026-03-02T08:00:00Z";

    @Parameter
    TestDatabases.Kind kind;

    private final List<Database> opened = new ArrayList<>();
    private SettableClock clock;
    private Database database;

    @BeforeEach
    final void openDatabase() {
        clock = SettableClock.at(START);
        database = database(Mode.SITE);
    }

    @AfterEach
    final void closeDatabases() {
        opened.forEach(Database::close);
    }

    /** The kind of database this run is on, for the rare sentence that differs. */
    protected final TestDatabases.Kind kind() {
        return kind;
    }

    protected final SettableClock clock() {
        return clock;
    }

    /** This method's database. */
    protected final Database database() {
        return database;
    }

    /** One more new database of the same kind, for example a demonstration's. */
    protected final Database database(Mode mode) {
        var another = Database.open(kind.settings(), mode, clock);
        opened.add(another);
        return another;
    }
}
