package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.signoff.DeskFixtures.done;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.Event;
import wallchart.audit.EventFilter;
import wallchart.audit.Ledger;
import wallchart.audit.LedgerStopped;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.signoff.Change.Signed;
import wallchart.store.Actor;
import wallchart.store.StoreException;
import wallchart.store.StoreFixtures;
import wallchart.store.TestDatabases;

/** A signature that fails after its version was written and before its event was: neither is kept, and the change still waits. */
class UnfinishedSignatureTest extends OnADesk {

    private static final String REFUSING_ON_H2 =
            "CREATE TRIGGER refusing BEFORE INSERT ON audit_event FOR EACH ROW CALL '" + RefuseEvent.class.getName()
                    + "'";
    private static final String REFUSAL =
            """
            CREATE FUNCTION refuse_event() RETURNS trigger LANGUAGE plpgsql AS $$
            BEGIN
                RAISE EXCEPTION 'no event with % versions', (SELECT COUNT(*) FROM chart_version);
            END $$""";
    private static final String REFUSING_ON_POSTGRESQL =
            "CREATE TRIGGER refusing BEFORE INSERT ON audit_event FOR EACH ROW EXECUTE FUNCTION refuse_event()";

    @Test
    void where_the_event_cannot_be_entered_there_is_no_version_either() throws Exception {
        var change = department.submittedSmall(1, "27");
        var events = events();
        if (kind() == TestDatabases.Kind.H2) {
            StoreFixtures.asOwner(database(), REFUSING_ON_H2);
        } else {
            StoreFixtures.asOwner(database(), REFUSAL, REFUSING_ON_POSTGRESQL);
        }
        assertThatThrownBy(() -> department.sign(department.lead, change))
                .isInstanceOf(StoreException.class)
                .hasStackTraceContaining("no event with 2 versions");
        assertStillWaiting(change, events);

        StoreFixtures.asOwner(
                database(),
                kind() == TestDatabases.Kind.H2 ? "DROP TRIGGER refusing" : "DROP TRIGGER refusing ON audit_event");
        assertThat(done(department.sign(department.lead, change)))
                .isInstanceOfSatisfying(
                        Signed.class, signed -> assertThat(signed.version()).isEqualTo(2));
        assertThat(events()).hasSize(events.size() + 1);
        LedgerSoundness.assertSound(database());
    }

    @Test
    void a_ledger_that_has_stopped_lets_nothing_be_signed() throws Exception {
        var change = department.submittedSmall(1, "27");
        var events = events();
        database().run(Actor.system("check"), tx -> new Ledger().stop(tx, "event 2 is missing"));
        assertThatThrownBy(() -> department.sign(department.lead, change))
                .isInstanceOf(LedgerStopped.class)
                .hasMessage("event 2 is missing");
        assertStillWaiting(change, events);
    }

    private void assertStillWaiting(Change change, List<Event> events) throws Exception {
        assertThat(desk.find(change.id())).contains(change);
        assertThat(desk.newest("r1")).isEqualTo(1);
        assertThat(department.charts.versions("r1")).hasSize(1);
        assertThat(new Charts(database(), department.rooms, ChartRules.adultsOnly()).versions("r1"))
                .hasSize(1);
        assertThat(events()).isEqualTo(events);
        LedgerSoundness.assertSound(database());
    }

    private List<Event> events() throws Exception {
        return new AuditTrail(database(), new Checkpoints(Files.createTempDirectory("ledger")), List.of())
                .page(EventFilter.ALL, 0, AuditTrail.LONGEST_PAGE);
    }
}
