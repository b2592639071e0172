package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Outcome.Kind;

/** The way of a change from its opening to the version it becomes, and who may do what. */
class SignoffDeskTest extends OnADesk {

    @Test
    void a_signed_change_is_the_next_version_and_answers_at_once() {
        var change = department.submittedSmall(1, "28");
        clock().advance(Duration.ofMinutes(5));
        var signed = (Signed) done(department.sign(department.lead, change));
        assertThat(signed.version()).isEqualTo(2);
        var version = department.charts.inForce("r1", clock().instant()).orElseThrow();
        assertThat(version.head().number()).isEqualTo(2);
        assertThat(version.head().signature().printedName()).isEqualTo("Printed lead");
        assertThat(version.content().rows()).contains(row(18, 24).withMAs("28").row());
        assertThat(desk.find(signed.id())).contains(signed);
    }

    @Test
    void what_is_stored_of_a_change_is_read_back_equal_in_every_state() {
        var drafted = department.put(department.opened(1), row(18, 24).withMAs("28"));
        assertThat(desk.find(drafted.id())).contains(drafted);
        var submitted = department.submitted(drafted);
        assertThat(desk.find(drafted.id())).contains(submitted);
        var concurred = done(desk.concur(department.physicist, drafted.id(), revision(submitted), Optional.empty()));
        assertThat(desk.find(drafted.id())).contains(concurred);
        var returned = done(desk.giveBack(department.lead, drafted.id(), revision(concurred), "say for which grid"));
        assertThat(desk.find(drafted.id())).contains(returned);
        var withdrawn = done(desk.withdraw(department.author, drafted.id(), revision(returned)));
        assertThat(desk.find(drafted.id())).contains(withdrawn);
        var other = department.submittedSmall(1, "28");
        var declined = done(desk.decline(department.lead, other.id(), revision(other), "the grid is at fault"));
        assertThat(desk.find(other.id())).contains(declined);
        assertThat(desk.list(ChangeFilter.newest(10))).containsExactly(declined, withdrawn);
    }

    @Test
    void the_author_cannot_sign_or_concur_with_their_own_change_also_where_they_lead() {
        var change = done(desk.open(department.lead, "r1", "Title", REASON, 1, ChangeKind.ORDINARY));
        change = done(desk.putRow(
                department.lead,
                change.id(),
                1,
                row(18, 24).row().key(),
                fields(row(18, 24).withMAs("28"))));
        change = done(desk.submit(department.lead, change.id(), revision(change)));
        assertRefused(department.sign(department.lead, change), Kind.NOT_ALLOWED);
        assertThat(done(department.sign(department.deputy, change)).state()).isEqualTo(ChangeState.SIGNED);
        var physicists = done(desk.revertTo(department.physicist, "r1", 1, REASON));
        physicists = done(desk.submit(department.physicist, physicists.id(), revision(physicists)));
        assertRefused(
                desk.concur(department.physicist, physicists.id(), revision(physicists), Optional.empty()),
                Kind.NOT_ALLOWED);
    }

    @Test
    void only_the_author_edits_submits_and_withdraws() {
        var change = department.opened(1);
        var key = row(18, 24).row().key();
        assertRefused(desk.putRow(department.colleague, change.id(), 1, key, fields(row(18, 24))), Kind.NOT_ALLOWED);
        assertRefused(desk.withdrawRow(department.lead, change.id(), 1, key), Kind.NOT_ALLOWED);
        assertRefused(desk.submit(department.colleague, change.id(), 1), Kind.NOT_ALLOWED);
        assertRefused(desk.withdraw(department.lead, change.id(), 1), Kind.NOT_ALLOWED);
    }

    @Test
    void radiographers_sign_nothing_and_physicists_only_concur() {
        var change = department.submittedSmall(1, "28");
        assertRefused(department.sign(department.colleague, change), Kind.NOT_ALLOWED);
        assertRefused(department.sign(department.physicist, change), Kind.NOT_ALLOWED);
        assertRefused(desk.concur(department.lead, change.id(), revision(change), Optional.empty()), Kind.NOT_ALLOWED);
        assertRefused(desk.decline(department.physicist, change.id(), revision(change), REASON), Kind.NOT_ALLOWED);
    }

    @Test
    void whoever_saw_an_older_revision_is_told_to_look_again() {
        var change = department.opened(1);
        department.put(change, row(18, 24).withMAs("28"));
        assertRefused(desk.submit(department.author, change.id(), revision(change)), Kind.STALE);
        assertRefused(desk.submit(department.author, 999, 1), Kind.NOT_FOUND);
    }

    @Test
    void what_is_returned_keeps_its_reason_while_the_author_edits_and_may_get_better_words() {
        var change = department.submittedSmall(1, "28");
        var returned = done(desk.giveBack(department.lead, change.id(), revision(change), "say for which grid"));
        var edited = department.put(returned, row(18, 24).withMAs("27"));
        var renamed = done(desk.rename(
                department.author, change.id(), revision(edited), "Thick patients, grid 10", REASON + ", grid 10"));
        assertThat(renamed).isInstanceOfSatisfying(Change.Returned.class, still -> assertThat(
                        still.decision().reason())
                .isEqualTo("say for which grid"));
        assertThat(desk.find(change.id())).contains(renamed);
        assertThat(renamed.head().title()).isEqualTo("Thick patients, grid 10");
        assertRefused(
                desk.rename(department.author, change.id(), revision(renamed), "Title", "too short"), Kind.UNREADABLE);
        assertRefused(desk.rename(department.lead, change.id(), revision(renamed), "Title", REASON), Kind.NOT_ALLOWED);
        LedgerSoundness.assertSound(database());
    }
}
