package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wallchart.people.PeopleFixtures;
import wallchart.people.Person;
import wallchart.people.Role;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Outcome.Kind;
import wallchart.store.Actor;

/** The right to sign is asked for at the moment of signing, and a signature names nobody who did not look at it. */
class WhoMaySignTest extends OnADesk {

    private Person account(Actor of) {
        return department.people.find(of.personId().orElseThrow()).orElseThrow();
    }

    private Actor become(Actor who, Role role) {
        var account = account(who);
        department.people.changeRole(PeopleFixtures.ADMINISTRATOR, account.id(), account.revision(), role);
        return account(who).asActor();
    }

    @Test
    void a_lead_whose_role_was_taken_while_they_signed_does_not_sign() {
        var change = department.submittedSmall(1, "27");
        become(department.lead, Role.RADIOGRAPHER);
        assertRefused(department.sign(department.lead, change), Kind.NOT_ALLOWED);
        assertThat(desk.find(change.id())).contains(change);
        assertThat(done(department.sign(department.deputy, change))).isInstanceOf(Signed.class);
    }

    @Test
    void a_disabled_physicist_does_not_concur_in_the_second_before_their_session_ends() {
        var change = department.submittedSmall(1, "40");
        PeopleFixtures.disable(department.people, account(department.physicist));
        assertRefused(
                desk.concur(department.physicist, change.id(), revision(change), Optional.empty()), Kind.NOT_ALLOWED);
        assertThat(desk.find(change.id())).contains(change);
    }

    @Test
    void whoever_lost_the_role_of_a_proposer_opens_nothing() {
        become(department.author, Role.ADMINISTRATOR);
        assertRefused(
                desk.open(department.author, "r1", "Title", DeskFixtures.REASON, 1, ChangeKind.ORDINARY),
                Kind.NOT_ALLOWED);
    }

    @Test
    void a_concurrence_that_is_void_is_no_part_of_the_signature() {
        var change = department.submittedSmall(1, "27");
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        var other = department.put(department.opened(1), row(12, 18).withMAs("27"));
        done(department.sign(department.lead, department.submitted(other)));
        var signed = (Signed) done(department.sign(department.lead, change));
        assertThat(signed.concurrence()).isEmpty();
    }

    @Test
    void who_signed_a_fast_track_change_is_not_the_second_to_look_at_it() {
        var change = department.put(department.fastTrack(1), row(18, 24).withMAs("12.5"));
        var signed = done(department.sign(department.lead, department.submitted(change)));
        var physicistNow = become(department.lead, Role.PHYSICIST);
        var words = "measured with the phantom: right";
        assertRefused(desk.recordSecondReview(physicistNow, signed.id(), revision(signed), words), Kind.NOT_ALLOWED);
        done(desk.recordSecondReview(department.physicist, signed.id(), revision(signed), words));
    }

    @Test
    void words_that_nobody_sees_are_no_reason() {
        for (var blank : List.of("\u00a0", "\u200b", "\u2060", "\u202e", "\u3000")) {
            assertRefused(
                    desk.open(department.author, "r1", "Title", blank.repeat(10), 1, ChangeKind.ORDINARY),
                    Kind.UNREADABLE);
        }
    }

    @Test
    void more_adjustments_than_are_kept_are_refused_and_not_a_fault() {
        var change = department.opened(1);
        assertRefused(
                desk.putAdjustments(department.author, change.id(), revision(change), adjustments(101, "")),
                Kind.UNREADABLE);
        assertRefused(
                desk.putAdjustments(
                        department.author, change.id(), revision(change), adjustments(100, "n".repeat(650))),
                Kind.UNREADABLE);
        done(desk.putAdjustments(department.author, change.id(), revision(change), adjustments(100, "n".repeat(400))));
    }

    private static List<Map<String, String>> adjustments(int many, String notes) {
        return IntStream.range(0, many)
                .mapToObj(number -> Map.of("name", "a" + number, "label", "words", "addKv", "1", "notes", notes))
                .toList();
    }
}
