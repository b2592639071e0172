package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.ChangeState.DECLINED;
import static wallchart.signoff.ChangeState.DRAFTING;
import static wallchart.signoff.ChangeState.RETURNED;
import static wallchart.signoff.ChangeState.SIGNED;
import static wallchart.signoff.ChangeState.SUBMITTED;
import static wallchart.signoff.ChangeState.WITHDRAWN;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import wallchart.signoff.Outcome.Kind;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/**
 * Six states, seven steps, three callers, with the revision they saw or an older one: random sequences of steps, each held against
 * the table below. A thousand sequences; ten thousand with {@code -Pthorough}.
 */
class StateActionMatrixTest {

    /** What somebody can do to a change. */
    enum Step {
        EDIT,
        SUBMIT,
        RETURN,
        DECLINE,
        WITHDRAW,
        CONCUR,
        SIGN
    }

    /** Who tries: somebody of the right role who is not the author where they must not be; the author, a lead; a radiographer. */
    enum Who {
        WHOEVER_MAY,
        AUTHOR,
        COLLEAGUE
    }

    /** One attempt. */
    record Attempt(Step step, Who who, boolean stale) {}

    /** Where each step leads; what does not stand here is refused. */
    private static final Map<ChangeState, Map<Step, ChangeState>> TABLE = Map.of(
            DRAFTING,
            Map.of(Step.EDIT, DRAFTING, Step.SUBMIT, SUBMITTED, Step.WITHDRAW, WITHDRAWN),
            RETURNED,
            Map.of(Step.EDIT, RETURNED, Step.SUBMIT, SUBMITTED, Step.WITHDRAW, WITHDRAWN),
            SUBMITTED,
            Map.of(
                    Step.RETURN, RETURNED,
                    Step.DECLINE, DECLINED,
                    Step.WITHDRAW, WITHDRAWN,
                    Step.CONCUR, SUBMITTED,
                    Step.SIGN, SIGNED),
            SIGNED,
            Map.of(),
            DECLINED,
            Map.of(),
            WITHDRAWN,
            Map.of());

    private static final Set<Step> AUTHORS_OWN = EnumSet.of(Step.EDIT, Step.SUBMIT, Step.WITHDRAW);

    private static final Map<ChangeState, Set<Step>> SEEN = new EnumMap<>(ChangeState.class);

    private static Database database;
    private static DeskFixtures department;
    private static int edits;

    @BeforeContainer
    static void aDepartmentWithAChart() {
        database = Database.open(TestDatabases.inMemory(), Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"));
        department = DeskFixtures.aDeskIn(database);
    }

    @AfterContainer
    static void everyCellWasTriedAndTheLedgerIsSound() {
        for (var state : ChangeState.values()) {
            assertThat(SEEN.get(state))
                    .as("steps tried on a change that is " + state)
                    .hasSize(Step.values().length);
        }
        LedgerSoundness.assertSound(database);
        database.close();
    }

    @Property
    void a_change_goes_where_the_table_says_and_nowhere_else(@ForAll("attempts") List<Attempt> attempts) {
        var change = opened();
        for (var attempt : attempts) {
            change = tried(change, attempt);
        }
    }

    @Provide
    Arbitrary<List<Attempt>> attempts() {
        var steps = Arbitraries.of(Step.class);
        var who = Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.just(Who.WHOEVER_MAY)), Tuple.of(1, Arbitraries.of(Who.AUTHOR, Who.COLLEAGUE)));
        var stale = Arbitraries.frequency(Tuple.of(9, false), Tuple.of(1, true));
        return Combinators.combine(steps, who, stale)
                .as(Attempt::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    private static Change opened() {
        int newest = department.charts.versions("r1").get(0).number();
        var change = done(department.desk.open(department.deputy, "r1", "Title", REASON, newest, ChangeKind.ORDINARY));
        return done(edit(department.deputy, change, revision(change)));
    }

    /** Another mAs each time, so that something always differs; within the limits of the impact. */
    private static Outcome edit(Actor by, Change change, int revision) {
        var other = row(18, 24).withMAs(String.valueOf(25 + edits++ % 4));
        var newest = department.charts.versions("r1").get(0).number();
        boolean same = department
                .charts
                .version("r1", newest)
                .orElseThrow()
                .content()
                .rows()
                .contains(other.row());
        var wanted = same ? row(18, 24).withMAs(String.valueOf(25 + edits++ % 4)) : other;
        return department.desk.putRow(by, change.id(), revision, wanted.row().key(), fields(wanted));
    }

    private static Change tried(Change before, Attempt attempt) {
        SEEN.computeIfAbsent(before.state(), state -> EnumSet.noneOf(Step.class))
                .add(attempt.step());
        var outcome = take(before, attempt);
        var stored = department.desk.find(before.id()).orElseThrow();
        var expected = expected(before, attempt);
        if (outcome instanceof Outcome.Done done) {
            assertThat(expected).as(before.state() + " " + attempt).isEmpty();
            assertThat(done.change().state())
                    .isEqualTo(TABLE.get(before.state()).get(attempt.step()));
            assertThat(revision(stored)).isEqualTo(revision(before) + 1);
            assertThat(stored).isEqualTo(done.change());
        } else {
            assertThat(((Outcome.Refused) outcome).kind())
                    .as(before.state() + " " + attempt)
                    .isEqualTo(expected.orElse(null));
            assertThat(stored).isEqualTo(before);
        }
        return stored;
    }

    /** Why it must be refused; empty where it must be done. */
    private static Optional<Kind> expected(Change change, Attempt attempt) {
        if (attempt.stale()) {
            return Optional.of(Kind.STALE);
        }
        boolean authors = AUTHORS_OWN.contains(attempt.step());
        if (attempt.who() == Who.COLLEAGUE || attempt.who() == Who.AUTHOR && !authors) {
            return Optional.of(Kind.NOT_ALLOWED);
        }
        return TABLE.get(change.state()).containsKey(attempt.step()) ? Optional.empty() : Optional.of(Kind.WRONG_STATE);
    }

    private static Actor actor(Attempt attempt) {
        return switch (attempt.who()) {
            case AUTHOR -> department.deputy;
            case COLLEAGUE -> department.colleague;
            case WHOEVER_MAY ->
                AUTHORS_OWN.contains(attempt.step())
                        ? department.deputy
                        : attempt.step() == Step.CONCUR ? department.physicist : department.lead;
        };
    }

    private static Outcome take(Change change, Attempt attempt) {
        var desk = department.desk;
        var by = actor(attempt);
        long id = change.id();
        int seen = attempt.stale() ? revision(change) - 1 : revision(change);
        return switch (attempt.step()) {
            case EDIT -> edit(by, change, seen);
            case SUBMIT -> desk.submit(by, id, seen);
            case RETURN -> desk.giveBack(by, id, seen, REASON);
            case DECLINE -> desk.decline(by, id, seen, REASON);
            case WITHDRAW -> desk.withdraw(by, id, seen);
            case CONCUR -> desk.concur(by, id, seen, Optional.empty());
            case SIGN ->
                desk.sign(by, id, seen, "approved", Optional.empty(), department.impact(change), Optional.empty());
        };
    }
}
