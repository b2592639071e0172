package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Outcome.Done;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;
import wallchart.store.Actor;
import wallchart.store.TestDatabases;

/**
 * Two people act on one change at the same moment, again and again: 2,000 races on H2, fewer on PostgreSQL, in four kinds. Exactly one
 * wins each; the other is told; the ledger has no gap.
 */
class RivalSignaturesTest extends OnADesk {

    /** Of both at once: the winner does not depend on who was asked first, and each side wins now and then. */
    private static final int LONGEST_HEAD_START_NANOS = 3_000_000;

    private final Random random = new Random(20260302);
    private final ExecutorService threads = Executors.newFixedThreadPool(2);
    private int turn;

    @AfterEach
    void noThreadIsLeft() {
        threads.shutdownNow();
    }

    private int races() {
        return kind() == TestDatabases.Kind.H2 ? 500 : 50;
    }

    @Test
    void of_two_signers_one_signs() throws Exception {
        signedOr(change -> {
            var impact = department.impact(change);
            return () -> sign(department.deputy, change, impact);
        });
    }

    @Test
    void a_change_is_signed_or_withdrawn() throws Exception {
        signedOr(change -> () -> desk.withdraw(department.author, change.id(), revision(change)));
    }

    /** What is handed in cannot be edited: the author loses, whoever comes first, and what is signed is what was handed in. */
    @Test
    void what_is_signed_is_what_was_handed_in_while_its_author_edits() throws Exception {
        for (int i = 0; i < races(); i++) {
            var change = waiting();
            var impact = department.impact(change);
            var handedIn = desk.proposal(change.id()).orElseThrow().after();
            var other = row(24, 30).withMAs("26");
            var winner = race(
                    change,
                    () -> sign(department.lead, change, impact),
                    () -> desk.putRow(
                            department.author,
                            change.id(),
                            revision(change),
                            other.row().key(),
                            fields(other)));
            assertThat(winner).isEqualTo("first");
            int version = ((Signed) desk.find(change.id()).orElseThrow()).version();
            assertThat(department.charts.version("r1", version).orElseThrow().content())
                    .isEqualTo(handedIn);
        }
        assertLedgerWithoutGap();
    }

    /** Returned and edited at once by its author, or signed as it was: never signed with an edit that nobody handed in. */
    @Test
    void a_change_is_signed_or_returned_and_edited() throws Exception {
        signedOr(change -> () -> returnedAndEdited(change));
    }

    /** The lead signs, somebody else does something else; each of them wins now and then. */
    private void signedOr(Function<Change, Callable<Outcome>> rival) throws Exception {
        var winners = new HashSet<String>();
        for (int i = 0; i < races(); i++) {
            var change = waiting();
            var impact = department.impact(change);
            winners.add(race(change, () -> sign(department.lead, change, impact), rival.apply(change)));
        }
        assertThat(winners).containsExactlyInAnyOrder("first", "second");
        assertLedgerWithoutGap();
    }

    private Outcome returnedAndEdited(Change change) {
        var outcome = desk.giveBack(department.deputy, change.id(), revision(change), REASON);
        if (!(outcome instanceof Done returned)) {
            return outcome;
        }
        var other = row(24, 30).withMAs("26");
        return desk.putRow(
                department.author,
                change.id(),
                revision(returned.change()),
                other.row().key(),
                fields(other));
    }

    /** Two changes of one room, signed at once: one is signed; whoever signs the other looks at it again, on top of the first. */
    @Test
    void of_two_changes_of_one_room_the_second_is_looked_at_again() throws Exception {
        for (int i = 0; i < races() / 5; i++) {
            int base = newest();
            var one = waiting();
            var thick = department.opened(base);
            var two = department.submitted(department.put(thick, row(24, 30).withMAs(mAs(24))));
            var impacts = List.of(department.impact(one), department.impact(two));
            var outcomes = both(
                    () -> sign(department.lead, one, impacts.get(0)),
                    () -> sign(department.deputy, two, impacts.get(1)));
            assertThat(outcomes).filteredOn(Done.class::isInstance).hasSize(1);
            var other = outcomes.get(0) instanceof Done ? two : one;
            assertThat(outcomes)
                    .contains(Outcome.impactChanged(impacts.get(other == one ? 0 : 1), department.impact(other)));
            assertThat(newest()).isEqualTo(base + 1);
            done(sign(department.lead, other, department.impact(other)));
            assertThat(newest()).isEqualTo(base + 2);
        }
        assertLedgerWithoutGap();
    }

    /** A change of the thick or the middle row that waits for a signature; something always differs. */
    private Change waiting() {
        return department.submittedSmall(newest(), mAs(18));
    }

    /** Another current-time product than the newest version has for that row, within the limits of the impact. */
    private String mAs(int from) {
        var now = department.charts.version("r1", newest()).orElseThrow().content().rows().stream()
                .filter(row -> row.key().band().from().centimetres().intValue() == from)
                .findFirst()
                .orElseThrow()
                .setting()
                .control()
                .mAs()
                .milliampereSeconds()
                .intValue();
        int next = 25 + turn++ % 4;
        return String.valueOf(next == now ? 25 + turn++ % 4 : next);
    }

    private int newest() {
        return department.charts.versions("r1").get(0).number();
    }

    private Outcome sign(Actor by, Change change, String impact) {
        return desk.sign(by, change.id(), revision(change), "approved", Optional.empty(), impact, Optional.empty());
    }

    /** Which of the two won; fails unless exactly one did and the other was told why. */
    private String race(Change change, Callable<Outcome> first, Callable<Outcome> second) throws Exception {
        var outcomes = both(first, second);
        assertThat(outcomes).filteredOn(Done.class::isInstance).hasSize(1);
        var lost = (Refused)
                outcomes.stream().filter(Refused.class::isInstance).findFirst().orElseThrow();
        assertThat(lost.kind()).isIn(Kind.STALE, Kind.WRONG_STATE);
        var won = (Done)
                outcomes.stream().filter(Done.class::isInstance).findFirst().orElseThrow();
        assertThat(desk.find(change.id())).contains(won.change());
        return outcomes.get(0) instanceof Done ? "first" : "second";
    }

    private List<Outcome> both(Callable<Outcome> first, Callable<Outcome> second) throws Exception {
        var start = new CyclicBarrier(2);
        var late = random.nextInt(LONGEST_HEAD_START_NANOS);
        boolean firstIsLate = random.nextBoolean();
        var one = threads.submit(() -> at(start, firstIsLate ? late : 0, first));
        var two = threads.submit(() -> at(start, firstIsLate ? 0 : late, second));
        return List.of(one.get(30, TimeUnit.SECONDS), two.get(30, TimeUnit.SECONDS));
    }

    private static Outcome at(CyclicBarrier start, int nanos, Callable<Outcome> act) throws Exception {
        start.await();
        LockSupport.parkNanos(nanos);
        return act.call();
    }

    /** The check derives the chain anew and finds one event for each version, and one version for each event. */
    private void assertLedgerWithoutGap() {
        LedgerSoundness.assertSound(database());
        Set<Integer> numbers = new HashSet<>();
        var versions = new ArrayList<>(department.charts.versions("r1"));
        versions.forEach(head -> numbers.add(head.number()));
        assertThat(numbers).hasSize(versions.size()).contains(1, versions.size());
    }
}
