package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.EventFilter;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;

/** What authors do to rows and adjustments of their changes. */
class EditedChangesTest extends OnADesk {

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
    void the_ledger_says_what_an_adjustment_was_and_is() throws IOException {
        var change = department.opened(1);
        var cast = Map.of("name", "cast", "label", "Dry cast", "timesMas", "1.5");
        change = done(desk.putAdjustments(department.author, change.id(), revision(change), List.of(cast)));
        var said = newestDetails();
        assertThat(said).contains("\"before\":[]").contains("\"timesMas\":\"1.5\"");
        done(desk.undoAdjustments(department.author, change.id(), revision(change)));
        assertThat(newestDetails()).contains("\"after\":[]").contains("\"timesMas\":\"1.5\"");
    }

    @Test
    void taking_back_what_was_not_done_is_refused_and_leaves_no_event() throws IOException {
        var change = department.opened(1);
        var before = newestDetails();
        assertRefused(desk.undoAdjustments(department.author, change.id(), revision(change)), Kind.NOT_FOUND);
        assertThat(newestDetails()).isEqualTo(before);
    }

    private String newestDetails() throws IOException {
        var events = new AuditTrail(database(), new Checkpoints(Files.createTempDirectory("ledger")), List.of())
                .page(EventFilter.ALL, 0, AuditTrail.LONGEST_PAGE);
        return events.get(events.size() - 1).details();
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
    void a_base_that_is_no_version_of_the_room_is_refused() {
        assertRefused(desk.open(department.author, "r1", "Title", REASON, 2, ChangeKind.ORDINARY), Kind.NOT_FOUND);
        assertRefused(desk.open(department.author, "r1", "Title", REASON, 0, ChangeKind.ORDINARY), Kind.NOT_FOUND);
        assertRefused(desk.open(department.author, "r9", "Title", REASON, 0, ChangeKind.ORDINARY), Kind.NOT_FOUND);
    }
}
