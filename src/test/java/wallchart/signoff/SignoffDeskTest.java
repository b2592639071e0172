package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.MEANING;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Change.Drafting;
import wallchart.signoff.Change.Returned;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;
import wallchart.store.OnEveryDatabase;

/** The way of a change from its opening to the version it becomes. */
class SignoffDeskTest extends OnEveryDatabase {

    private DeskFixtures department;
    private SignoffDesk desk;

    @BeforeEach
    void a_department_with_a_chart() {
        department = DeskFixtures.aDeskIn(database());
        desk = department.desk;
    }

    private static void assertRefused(Outcome outcome, Kind kind) {
        assertThat(outcome).isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.kind())
                .as(refused.detail())
                .isEqualTo(kind));
    }

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
    void an_edit_answers_with_the_chart_as_it_would_be() {
        var change = department.put(department.opened(1), row(18, 24).withMAs("28"));
        change = done(desk.withdrawRow(
                department.author,
                change.id(),
                revision(change),
                row(12, 18).row().key()));
        var assessment = desk.assessment(change.id()).orElseThrow();
        assertThat(assessment.proposal().after().rows())
                .containsExactly(row(18, 24).withMAs("28").row(), row(24, 30).row());
        assertThat(assessment.impact().rows()).hasSize(2);
        change = done(desk.undoRow(
                department.author,
                change.id(),
                revision(change),
                row(12, 18).row().key()));
        assertThat(desk.proposal(change.id()).orElseThrow().after().rows()).hasSize(3);
    }

    @Test
    void a_row_whose_band_moves_takes_the_place_of_the_one_edited() {
        var change = department.opened(1);
        change = done(desk.putRow(
                department.author,
                change.id(),
                revision(change),
                row(24, 30).row().key(),
                fields(row(24, 32))));
        var after = desk.proposal(change.id()).orElseThrow().after();
        assertThat(after.rows())
                .containsExactly(
                        row(12, 18).row(), row(18, 24).row(), row(24, 32).row());
        assertRefused(
                desk.putRow(
                        department.author,
                        change.id(),
                        revision(change),
                        row(24, 32).row().key(),
                        fields(row(18, 24))),
                Kind.UNREADABLE);
    }

    @Test
    void a_row_put_back_as_it_was_is_no_edit_any_more() {
        var change = department.put(department.opened(1), row(18, 24).withMAs("28"));
        change = department.put(change, row(18, 24));
        assertThat(desk.proposal(change.id()).orElseThrow().edits()).isEqualTo(Edits.NONE);
    }

    @Test
    void named_adjustments_change_as_one() {
        var change = department.opened(1);
        var cast = Map.of("name", "cast", "label", "Dry cast", "timesMas", "1.5");
        change = done(desk.putAdjustments(department.author, change.id(), revision(change), List.of(cast)));
        assertThat(desk.proposal(change.id()).orElseThrow().after().adjustments())
                .hasSize(1);
        assertRefused(
                desk.putAdjustments(department.author, change.id(), revision(change), List.of(cast, cast)),
                Kind.UNREADABLE);
        change = done(desk.undoAdjustments(department.author, change.id(), revision(change)));
        assertThat(desk.proposal(change.id()).orElseThrow().after().adjustments())
                .isEmpty();
    }

    @Test
    void a_field_that_is_no_field_is_refused_by_its_name() {
        var change = department.opened(1);
        var fields = new HashMap<>(fields(row(18, 24)));
        fields.put("kVp", "75");
        var outcome = (Refused) desk.putRow(
                department.author,
                change.id(),
                revision(change),
                row(18, 24).row().key(),
                fields);
        assertThat(outcome.problems()).extracting(Problem::field).containsExactly("kVp");
        assertThat(desk.find(change.id())).contains(change);
    }

    @Test
    void a_chart_with_blocking_findings_is_not_submitted() {
        var change = department.put(department.opened(1), row(18, 24).withKV("400"));
        assertThat(desk.assessment(change.id()).orElseThrow().isBlocked()).isTrue();
        assertRefused(desk.submit(department.author, change.id(), revision(change)), Kind.BLOCKED);
        assertRefused(desk.submit(department.author, department.opened(1).id(), 1), Kind.BLOCKED); // nothing differs
    }

    @Test
    void a_reason_of_nine_visible_characters_is_too_short() {
        assertRefused(
                desk.open(department.author, "r1", "Title", "a b c d e f g h i", 1, ChangeKind.ORDINARY),
                Kind.UNREADABLE);
        done(desk.open(department.author, "r1", "Title", "a b c d e f g h i j", 1, ChangeKind.ORDINARY));
        var change = department.submittedSmall(1, "28");
        assertRefused(desk.giveBack(department.lead, change.id(), revision(change), "no"), Kind.UNREADABLE);
        assertRefused(desk.decline(department.lead, change.id(), revision(change), "no \u0007"), Kind.UNREADABLE);
        assertThat(desk.find(change.id())).contains(change);
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
    void a_shift_beyond_the_limit_needs_the_physicist_who_saw_that_very_impact() {
        var change = department.submittedSmall(1, "40"); // 10 log10(40/25) = 2.04 dB
        assertRefused(department.sign(department.lead, change), Kind.CONCURRENCE_NEEDED);
        assertRefused(
                desk.concur(department.physicist, change.id(), revision(change), Optional.of("sha256:another")),
                Kind.IMPACT_CHANGED);
        change = done(desk.concur(
                department.physicist, change.id(), revision(change), Optional.of(department.impact(change))));
        assertThat(done(department.sign(department.lead, change)))
                .isInstanceOfSatisfying(Signed.class, signed -> assertThat(
                                signed.concurrence().orElseThrow().by().printedName())
                        .isEqualTo("Printed physicist"));
    }

    @Test
    void a_concurrence_does_not_outlive_a_newer_version() {
        var change = department.submittedSmall(1, "40");
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        var other = department.submitted(
                department.put(department.opened(1), row(12, 18).withMAs("27")));
        done(department.sign(department.lead, other));
        assertRefused(department.sign(department.lead, change), Kind.CONCURRENCE_NEEDED);
    }

    @Test
    void whoever_signs_names_the_impact_they_saw() {
        var change = department.submittedSmall(1, "28");
        assertRefused(
                desk.sign(
                        department.lead,
                        change.id(),
                        revision(change),
                        MEANING,
                        Optional.empty(),
                        "sha256:" + "0".repeat(64),
                        Optional.empty()),
                Kind.IMPACT_CHANGED);
    }

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
    void a_scheduled_version_answers_from_its_instant_on_and_not_before() {
        var change = department.submittedSmall(1, "28");
        Instant monday = clock().instant().plus(Duration.ofDays(7));
        done(desk.sign(
                department.lead,
                change.id(),
                revision(change),
                MEANING,
                Optional.of(monday),
                department.impact(change),
                Optional.empty()));
        assertThat(inForce(monday.minusMillis(1))).isEqualTo(1);
        assertThat(inForce(monday)).isEqualTo(2);
    }

    @Test
    void a_signature_cannot_be_dated_back() {
        var change = department.submittedSmall(1, "28");
        assertRefused(
                desk.sign(
                        department.lead,
                        change.id(),
                        revision(change),
                        MEANING,
                        Optional.of(clock().instant().minusSeconds(1)),
                        department.impact(change),
                        Optional.empty()),
                Kind.BLOCKED);
        assertThat(desk.find(change.id())).contains(change);
        assertThat(department.charts.versions("r1")).hasSize(1);
    }

    private int inForce(Instant at) {
        return department.charts.inForce("r1", at).orElseThrow().head().number();
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

    @Test
    void a_fast_track_change_is_signed_at_once_and_looked_at_within_72_hours() {
        var change = department.submitted(
                department.put(department.fastTrack(1), row(18, 24).withMAs("12.5")));
        var signed = (Signed) done(department.sign(department.lead, change));
        var due = clock().instant().plus(Duration.ofHours(72));
        assertThat(signed.secondReview().orElseThrow().due()).isEqualTo(due);
        assertThat(desk.secondReviews(true)).containsExactly(signed);
        var words = "measured with the phantom: right";
        assertRefused(
                desk.recordSecondReview(department.deputy, signed.id(), revision(signed), words), Kind.NOT_ALLOWED);
        var reviewed =
                (Signed) done(desk.recordSecondReview(department.physicist, signed.id(), revision(signed), words));
        assertThat(desk.secondReviews(true)).isEmpty();
        assertThat(desk.secondReviews(false)).containsExactly(reviewed);
        assertRefused(
                desk.recordSecondReview(department.physicist, signed.id(), revision(reviewed), words),
                Kind.WRONG_STATE);
    }

    @Test
    void a_fast_track_change_that_a_physicist_concurred_with_needs_no_second_look() {
        var change = department.submitted(
                department.put(department.fastTrack(1), row(18, 24).withMAs("12.5")));
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        assertThat(((Signed) done(department.sign(department.lead, change))).secondReview())
                .isEmpty();
    }

    @Test
    void a_base_that_is_no_version_of_the_room_is_refused() {
        assertRefused(desk.open(department.author, "r1", "Title", REASON, 2, ChangeKind.ORDINARY), Kind.NOT_FOUND);
        assertRefused(desk.open(department.author, "r1", "Title", REASON, 0, ChangeKind.ORDINARY), Kind.NOT_FOUND);
        assertRefused(desk.open(department.author, "r9", "Title", REASON, 0, ChangeKind.ORDINARY), Kind.NOT_FOUND);
    }
}
