package wallchart.signoff;

import static wallchart.signoff.DeskFixtures.done;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;
import wallchart.store.SettableClock;
import wallchart.store.StoreFixtures;
import wallchart.store.TestDatabases;

/**
 * A program that founds a department in a database file, hands a change in and signs it, and whose machine halts: between the act
 * and its event, or after both. It prints the change's number, then how many versions there are as it halts.
 */
public final class SignUntilHalted {

    static final String BETWEEN = "between act and event";
    static final String AFTER = "after both";
    static final int HALTED = 42;

    private static volatile Database running;

    private SignUntilHalted() {}

    /** Arguments: the folder of the database; when to halt. */
    public static void main(String[] arguments) {
        var settings = TestDatabases.inFile(Path.of(arguments[0]));
        var database = Database.open(settings, Mode.SITE, SettableClock.at(OnEveryDatabase.START));
        var department = DeskFixtures.aDeskIn(database);
        var change = department.submittedSmall(1, "27");
        say(change.id());
        StoreFixtures.asOwner(
                database,
                "CREATE TRIGGER halting BEFORE INSERT ON audit_event FOR EACH ROW CALL '" + Halting.class.getName()
                        + "'");
        running = arguments[1].equals(BETWEEN) ? database : null;
        done(department.sign(department.lead, change));
        say(department.charts.versions("r1").size());
        Runtime.getRuntime().halt(HALTED);
    }

    private static void say(Object word) {
        System.out.println(word);
        System.out.flush();
    }

    /**
     * Halts the program that armed it, and nobody else, as it is about to enter an event. What the transaction wrote so far is synced to
     * the file before, so that opening the file again has to take it back.
     */
    public static final class Halting implements Trigger {
        @Override
        public void fire(Connection own, Object[] before, Object[] after) throws SQLException {
            if (running != null) {
                try (var query = own.createStatement();
                        var rows = query.executeQuery("SELECT COUNT(*) FROM chart_version")) {
                    rows.next();
                    StoreFixtures.asOwner(running, "CHECKPOINT SYNC");
                    say(rows.getInt(1));
                }
                Runtime.getRuntime().halt(HALTED);
            }
        }
    }
}
