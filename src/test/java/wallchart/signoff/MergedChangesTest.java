package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.MEANING;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.signoff.Change.Drafting;
import wallchart.signoff.Change.Returned;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;

/** Changes that others overtook, and changes that go back. */
class MergedChangesTest extends OnADesk {

    @Test
    void a_change_made_on_an_older_version_is_merged_where_no_row_it_touches_has_moved() {
        var mine = department.submittedSmall(1, "28");
        var other = department.submitted(
                department.put(department.opened(1), row(12, 18).withMAs("27")));
        done(department.sign(department.lead, other));
        var signed = (Signed) done(department.sign(department.lead, mine));
        assertThat(signed.version()).isEqualTo(3);
        assertThat(department.charts.version("r1", 3).orElseThrow().content().rows())
                .containsExactly(
                        row(12, 18).withMAs("27").row(),
                        row(18, 24).withMAs("28").row(),
                        row(24, 30).row());
    }

    @Test
    void a_row_that_others_moved_sends_the_change_back_with_the_row_named() {
        var mine = department.submittedSmall(1, "28");
        var other = department.submittedSmall(1, "27");
        done(department.sign(department.lead, other));
        var outcome = department.sign(department.lead, mine);
        assertRefused(outcome, Kind.CONFLICT);
        assertThat(((Refused) outcome).conflicts()).containsExactly("LSPINE/ap/adult/table-bucky/18-24");
        var returned = (Returned) desk.find(mine.id()).orElseThrow();
        assertThat(returned.head().baseVersion()).isEqualTo(2);
        assertRefused(desk.submit(department.author, mine.id(), revision(returned)), Kind.BLOCKED);
        var again = department.submitted(department.put(returned, row(18, 24).withMAs("28")));
        assertThat(((Signed) done(department.sign(department.lead, again))).version())
                .isEqualTo(3);
    }

    @Test
    void an_author_who_takes_up_the_newest_version_keeps_what_does_not_conflict() {
        var mine = department.put(
                department.put(department.opened(1), row(18, 24).withMAs("28")),
                row(24, 30).withMAs("26"));
        done(department.sign(department.lead, department.submittedSmall(1, "27")));
        var caughtUp = (Drafting) done(desk.catchUp(department.author, mine.id(), revision(mine)));
        assertThat(caughtUp.head().baseVersion()).isEqualTo(2);
        assertThat(desk.proposal(mine.id()).orElseThrow().conflicts())
                .containsExactly("LSPINE/ap/adult/table-bucky/18-24");
        var undone = done(desk.undoRow(
                department.author,
                mine.id(),
                revision(caughtUp),
                row(18, 24).row().key()));
        assertThat(desk.proposal(mine.id()).orElseThrow().conflicts()).isEmpty();
        assertThat(department.submitted(undone)).isInstanceOf(Submitted.class);
    }

    @Test
    void a_revert_prepared_in_one_step_brings_the_version_back_as_it_was() {
        done(department.sign(department.lead, department.submittedSmall(1, "28")));
        var revert = done(desk.revertTo(department.author, "r1", 1, REASON));
        assertThat(desk.proposal(revert.id()).orElseThrow().after())
                .isEqualTo(department.charts.version("r1", 1).orElseThrow().content());
        assertRefused(
                desk.putRow(
                        department.author,
                        revert.id(),
                        revision(revert),
                        row(18, 24).row().key(),
                        fields(row(18, 24))),
                Kind.WRONG_STATE);
        done(department.sign(department.lead, department.submitted(revert)));
        assertThat(department.charts.version("r1", 3).orElseThrow().content())
                .isEqualTo(department.charts.version("r1", 1).orElseThrow().content());
    }

    @Test
    void a_revert_to_what_the_newest_version_says_already_is_not_opened() {
        assertRefused(desk.revertTo(department.author, "r1", 1, REASON), Kind.BLOCKED);
        assertRefused(desk.revertTo(department.author, "r1", 2, REASON), Kind.NOT_FOUND);
        assertThat(desk.list(ChangeFilter.newest(10))).isEmpty();
    }

    /** The version they saw is part of what they sign, or another's rows would come into force under their signature unseen. */
    @Test
    void whoever_looked_before_another_version_was_signed_looks_again() {
        var mine = department.submittedSmall(1, "28");
        var seen = department.impact(mine);
        done(department.sign(
                department.deputy,
                department.submitted(
                        department.put(department.opened(1), row(12, 18).withMAs("27")))));
        assertRefused(
                desk.sign(
                        department.lead, mine.id(), revision(mine), MEANING, Optional.empty(), seen, Optional.empty()),
                Kind.IMPACT_CHANGED);
        assertThat(done(department.sign(department.lead, mine)).state()).isEqualTo(ChangeState.SIGNED);
    }
}
