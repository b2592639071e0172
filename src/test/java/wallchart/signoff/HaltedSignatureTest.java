package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.MEANING;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;

import java.nio.file.Path;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.EventFilter;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.people.PeopleFixtures;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;
import wallchart.store.OtherProcess;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** The machine halts while somebody signs, the file is opened again: there are an act and its event, or neither. */
class HaltedSignatureTest {

    private static final String SIGNED = "version-signed";

    @TempDir
    Path folder;

    @Test
    void a_halt_between_version_and_event_leaves_neither() throws Exception {
        long id = halted(SignUntilHalted.BETWEEN);
        try (var database = open()) {
            var desk = desk(database);
            assertThat(desk.newest("r1")).isEqualTo(1);
            assertThat(signatures(database)).isEqualTo(1);
            LedgerSoundness.assertSound(database);

            var waiting = desk.find(id).orElseThrow();
            assertThat(waiting).isInstanceOf(Submitted.class);
            assertThat(done(signed(database, desk, waiting))).isInstanceOf(Signed.class);
            assertThat(signatures(database)).isEqualTo(2);
            LedgerSoundness.assertSound(database);
        }
    }

    /** Shows that the test above looks where a signature would be seen. */
    @Test
    void a_halt_after_the_signature_leaves_both() throws Exception {
        long id = halted(SignUntilHalted.AFTER);
        try (var database = open()) {
            var desk = desk(database);
            assertThat(desk.newest("r1")).isEqualTo(2);
            assertThat(desk.find(id).orElseThrow()).isInstanceOf(Signed.class);
            assertThat(signatures(database)).isEqualTo(2);
            LedgerSoundness.assertSound(database);
        }
    }

    /** In both cases the second version had been written. */
    private long halted(String when) throws Exception {
        try (var other = OtherProcess.start(SignUntilHalted.class, folder.toString(), when)) {
            long id = Long.parseLong(other.readLine());
            assertThat(other.readLine()).isEqualTo("2");
            assertThat(other.ended()).isEqualTo(SignUntilHalted.HALTED);
            return id;
        }
    }

    private Database open() {
        return Database.open(TestDatabases.inFile(folder), Mode.SITE, SettableClock.at(OnEveryDatabase.START));
    }

    private static SignoffDesk desk(Database database) {
        var rooms = new Rooms(database);
        var rules = ChartRules.adultsOnly();
        return new SignoffDesk(
                database,
                rooms,
                new Charts(database, rooms, rules),
                rules,
                SignoffFixtures.CALCULATION,
                SignoffFixtures.GRADING,
                Period.ofYears(1));
    }

    private static Outcome signed(Database database, SignoffDesk desk, Change change) {
        var impact = desk.assessment(change.id()).orElseThrow().impact().digest();
        return desk.sign(
                lead(database), change.id(), revision(change), MEANING, Optional.empty(), impact, Optional.empty());
    }

    private static Actor lead(Database database) {
        return PeopleFixtures.peopleOf(database)
                .findByName("lead")
                .orElseThrow()
                .asActor();
    }

    private long signatures(Database database) {
        return new AuditTrail(database, new Checkpoints(folder.resolve("ledger")), List.of())
                .page(EventFilter.ALL, 0, AuditTrail.LONGEST_PAGE).stream()
                        .filter(event -> event.action().equals(SIGNED))
                        .count();
    }
}
