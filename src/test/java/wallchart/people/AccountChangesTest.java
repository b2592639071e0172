package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.people.PeopleFixtures.ADDRESS;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.PASSWORD;
import static wallchart.people.PeopleFixtures.aPerson;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.done;
import static wallchart.people.PeopleFixtures.enable;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.people.PeopleFixtures.signedIn;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

class AccountChangesTest extends OnEveryDatabase {

    private static final String ANOTHER = "another long password";

    private People people;
    private Person aino;

    @BeforeEach
    void aino_has_an_account() {
        people = peopleOf(database());
        aino = aRadiographer(people, "aino");
    }

    @Test
    void every_change_raises_the_revision() {
        assertThat(aino.revision()).isEqualTo(1);
        var lead = done(people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.LEAD));
        assertThat(lead.role()).isEqualTo(Role.LEAD);
        assertThat(lead.revision()).isEqualTo(2);
        assertThat(done(people.setPassword(ADMINISTRATOR, aino.id(), 2, ANOTHER))
                        .revision())
                .isEqualTo(3);
        assertThat(disable(people, aino).revision()).isEqualTo(4);
        assertThat(enable(people, aino).revision()).isEqualTo(5);
    }

    @Test
    void who_decides_on_what_is_no_longer_so_changes_nothing() {
        done(people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.LEAD));
        assertRefused(people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.PHYSICIST), Reason.CHANGED_MEANWHILE);
        assertRefused(people.setPassword(ADMINISTRATOR, aino.id(), 1, ANOTHER), Reason.CHANGED_MEANWHILE);
        assertRefused(people.disable(ADMINISTRATOR, aino.id(), 1, "left"), Reason.CHANGED_MEANWHILE);
        assertRefused(people.enable(ADMINISTRATOR, aino.id(), 1, "back"), Reason.CHANGED_MEANWHILE);
        assertThat(people.find(aino.id()).orElseThrow().role()).isEqualTo(Role.LEAD);
    }

    @Test
    void what_is_so_already_is_left_alone() {
        var disabled = disable(people, aino);
        clock().advance(Duration.ofDays(1));
        assertThat(disable(people, aino)).isEqualTo(disabled);
        var enabled = enable(people, aino);
        assertThat(enable(people, aino)).isEqualTo(enabled);
        assertThat(done(people.changeRole(ADMINISTRATOR, aino.id(), enabled.revision(), aino.role())))
                .isEqualTo(enabled);
    }

    @Test
    void another_role_ends_all_sessions_here_at_once_and_elsewhere_within_a_second() {
        var elsewhere = peopleOf(database());
        var in = signedIn(people, aino);
        assertThat(elsewhere.session(in.sessionToken())).isPresent();
        done(people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.LEAD));
        assertThat(people.session(in.sessionToken())).isEmpty();
        clock().advance(Duration.ofSeconds(1));
        assertThat(elsewhere.session(in.sessionToken())).isEmpty();
    }

    @Test
    void ones_own_new_password_ends_ones_other_sessions_only() {
        var here = signedIn(people, aino);
        var forgotten = signedIn(people, aino);
        var session = people.session(here.sessionToken()).orElseThrow();
        done(people.setOwnPassword(aino.asActor(), session, ANOTHER));
        assertThat(people.session(here.sessionToken())).isPresent();
        assertThat(people.session(forgotten.sessionToken())).isEmpty();
        assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isInstanceOf(SignIn.Refused.class);
        assertThat(people.signIn("aino", ANOTHER, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
    }

    @Test
    void a_new_password_follows_the_rules_and_an_unknown_person_gets_none() {
        assertRefused(people.setPassword(ADMINISTRATOR, aino.id(), 1, "too short"), Reason.PASSWORD_TOO_SHORT);
        assertRefused(people.setPassword(ADMINISTRATOR, 4711, 1, PASSWORD), Reason.UNKNOWN_PERSON);
        assertRefused(people.disable(ADMINISTRATOR, 4711, 1, "left"), Reason.UNKNOWN_PERSON);
    }

    @Test
    void a_person_never_becomes_a_workstation() {
        assertRefused(people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.WORKSTATION), Reason.ROLE_NOT_FOR_PEOPLE);
    }

    @Test
    void disabling_and_enabling_need_a_reason_that_can_be_written() {
        for (var reason : List.of("", "  ", "two\nlines", "half a letter \udc00", "x".repeat(1001))) {
            assertRefused(people.disable(ADMINISTRATOR, aino.id(), 1, reason), Reason.REASON_UNUSABLE);
            assertRefused(people.enable(ADMINISTRATOR, aino.id(), 1, reason), Reason.REASON_UNUSABLE);
        }
    }

    @Test
    void the_last_administrator_who_may_sign_in_stays_one() {
        var first = aPerson(people, "first", Role.ADMINISTRATOR);
        assertRefused(people.disable(ADMINISTRATOR, first.id(), 1, "left"), Reason.LAST_ADMINISTRATOR);
        assertRefused(people.changeRole(ADMINISTRATOR, first.id(), 1, Role.LEAD), Reason.LAST_ADMINISTRATOR);
        var second = aPerson(people, "second", Role.ADMINISTRATOR);
        disable(people, second);
        assertRefused(people.disable(ADMINISTRATOR, first.id(), 1, "left"), Reason.LAST_ADMINISTRATOR);
        enable(people, second);
        disable(people, first);
        assertThat(people.find(first.id()).orElseThrow().isDisabled()).isTrue();
    }

    @Test
    void two_administrators_who_disable_each_other_at_the_same_moment_leave_one() throws Exception {
        for (int round = 0; round < 5; round++) {
            var one = aPerson(people, "one" + round, Role.ADMINISTRATOR);
            var other = aPerson(people, "other" + round, Role.ADMINISTRATOR);
            var gate = new CyclicBarrier(2);
            var results = atOnce(disabling(one, other, gate), disabling(other, one, gate));
            assertThat(results.stream().filter(Registered.class::isInstance).count())
                    .isLessThanOrEqualTo(1);
            var left = people.list().stream()
                    .filter(person -> person.role() == Role.ADMINISTRATOR && !person.isDisabled())
                    .toList();
            assertThat(left).as("round %d", round).isNotEmpty();
            left.forEach(person -> database().run(ADMINISTRATOR, tx -> new PersonStore().disable(tx, person.id())));
        }
    }

    private Callable<Object> disabling(Person by, Person whom, CyclicBarrier gate) {
        return () -> {
            gate.await();
            try {
                return people.disable(by.asActor(), whom.id(), whom.revision(), "a quarrel");
            } catch (StoreException conflict) {
                assertThat(conflict.kind()).isEqualTo(StoreException.Kind.CONFLICT);
                return conflict;
            }
        };
    }

    private static List<Object> atOnce(Callable<Object> one, Callable<Object> other) throws Exception {
        var threads = Executors.newFixedThreadPool(2);
        try {
            var results = new ArrayList<Object>();
            for (var result : threads.invokeAll(List.of(one, other))) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdown();
        }
    }

    private static void assertRefused(Registration result, Reason reason) {
        assertThat(result).isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.reason())
                .isEqualTo(reason));
    }
}
