package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static wallchart.signoff.DeskFixtures.MEANING;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.Finding;
import wallchart.chart.VersionHead;
import wallchart.signoff.Outcome.Kind;

/** A change signed on top of a version that waits for its day brings its rows into force with it: whoever signs sees, and answers for, that. */
class EarlyStartsTest extends OnADesk {

    private static final String THIN = "LSPINE/ap/adult/table-bucky/12-18";
    private static final String MIDDLE = "LSPINE/ap/adult/table-bucky/18-24";

    private Instant monday;

    @BeforeEach
    void a_week() {
        monday = clock().instant().plus(Duration.ofDays(7));
    }

    @Test
    void the_rows_that_come_into_force_earlier_than_signed_stand_in_the_impact() {
        signedFor(monday, large(1)); // 10 log10(40/25) = 2.04 dB, from Monday
        var urgent = small(2);
        var impact = impact(urgent);
        assertThat(impact.rows()).extracting(RowImpact::rowKey).containsExactly(THIN);
        assertThat(impact.earlyStarts()).singleElement().satisfies(early -> {
            assertThat(early.before()).isEqualTo(monday);
            assertThat(early.againstVersion()).isEqualTo(1);
            assertThat(early.overtaken()).extracting(VersionHead::number).containsExactly(2);
            assertThat(early.broughtRows()).containsExactly(MIDDLE);
            assertThat(early.rows())
                    .extracting(
                            RowImpact::rowKey, shift -> shift.exposureShiftDb().orElseThrow())
                    .containsExactly(tuple(THIN, 0.33), tuple(MIDDLE, 2.04));
        });
    }

    @Test
    void a_start_before_the_waiting_version_needs_the_physicist_who_saw_its_rows() {
        signedFor(monday, large(1));
        var urgent = small(2);
        assertRefused(sign(urgent, Optional.empty()), Kind.CONCURRENCE_NEEDED);
        assertRefused(sign(urgent, Optional.of(monday.minusMillis(1))), Kind.CONCURRENCE_NEEDED);
        urgent = done(desk.concur(
                department.physicist, urgent.id(), revision(urgent), Optional.of(department.impact(urgent))));
        done(sign(urgent, Optional.empty()));
        assertThat(answering(clock().instant())).isEqualTo(3);
        assertThat(answering(monday)).isEqualTo(3);
    }

    @Test
    void the_signature_says_in_the_ledger_which_versions_it_overtakes() {
        signedFor(monday, department.submittedSmall(1, "28"));
        var early = done(sign(small(2), Optional.empty()));
        assertThat(lastEvent(early)).contains("\"overtakenVersions\":[2]");
        var later = department.submitted(
                department.put(department.opened(3), row(24, 30).withMAs("27")));
        assertThat(lastEvent(done(sign(later, Optional.empty())))).doesNotContain("overtakenVersions");
    }

    private String lastEvent(Change change) {
        var events = desk.history(change.id()).orElseThrow();
        return events.get(events.size() - 1).details();
    }

    @Test
    void a_start_with_the_waiting_version_or_later_is_judged_by_the_change_alone() {
        signedFor(monday, large(1));
        done(sign(small(2), Optional.of(monday)));
        assertThat(answering(monday.minusMillis(1))).isEqualTo(1);
        assertThat(answering(monday)).isEqualTo(3);
    }

    @Test
    void a_row_that_both_move_is_judged_by_the_whole_way_from_what_answers() {
        signedFor(monday, department.submittedSmall(1, "30")); // 0.79 dB from 25 mAs
        var urgent = department.submittedSmall(2, "36"); // 0.79 dB from 30 mAs, 1.58 dB from 25 mAs
        assertThat(impact(urgent).needsPhysicist(monday)).isFalse();
        var early = impact(urgent).earlyStarts().get(0);
        assertThat(early.broughtRows()).isEmpty();
        assertThat(early.rows().get(0).exposureShiftDb()).hasValue(1.58);
        assertRefused(sign(urgent, Optional.empty()), Kind.CONCURRENCE_NEEDED);
    }

    /** What was seen while the version waited is not what a signature does once it answers. */
    @Test
    void what_a_start_brings_is_part_of_what_is_signed() {
        signedFor(monday, large(1));
        var urgent = small(2);
        var seen = department.impact(urgent);
        clock().set(monday.toString());
        assertThat(impact(urgent).earlyStarts()).isEmpty();
        assertRefused(
                desk.sign(
                        department.lead,
                        urgent.id(),
                        revision(urgent),
                        MEANING,
                        Optional.empty(),
                        seen,
                        Optional.empty()),
                Kind.IMPACT_CHANGED);
        done(sign(urgent, Optional.empty()));
    }

    @Test
    void of_two_waiting_versions_each_start_is_held_against_what_answers_until_then() {
        signedFor(monday, large(1));
        var tuesday = monday.plus(Duration.ofDays(1));
        signedFor(
                tuesday,
                department.submitted(
                        department.put(department.opened(2), row(24, 30).withMAs("27"))));
        var urgent = small(3);
        assertThat(impact(urgent).earlyStarts())
                .extracting(EarlyStart::before, EarlyStart::againstVersion, EarlyStart::needsPhysicist)
                .containsExactly(tuple(monday, 1, true), tuple(tuesday, 2, false));
        assertRefused(sign(urgent, Optional.of(monday.minusMillis(1))), Kind.CONCURRENCE_NEEDED);
        done(sign(urgent, Optional.of(monday)));
    }

    @Test
    void a_version_that_was_overtaken_before_its_day_never_answers_and_is_no_stage() {
        signedFor(monday.plus(Duration.ofDays(1)), large(1));
        signedForWithPhysicist(monday, small(2));
        var urgent = department.submitted(
                department.put(department.opened(3), row(24, 30).withMAs("27")));
        assertThat(impact(urgent).earlyStarts()).singleElement().satisfies(early -> {
            assertThat(early.againstVersion()).isEqualTo(1);
            assertThat(early.overtaken()).extracting(VersionHead::number).containsExactly(2, 3);
            assertThat(early.broughtRows()).containsExactlyInAnyOrder(THIN, MIDDLE);
        });
    }

    @Test
    void a_signed_change_shows_the_very_impact_that_was_signed() {
        signedFor(monday, department.submittedSmall(1, "28"));
        var urgent = small(2);
        var seen = department.impact(urgent);
        var signed = done(sign(urgent, Optional.empty()));
        clock().set(monday.plus(Duration.ofDays(3)).toString());
        assertThat(department.impact(signed)).isEqualTo(seen);
    }

    @Test
    void a_finding_names_what_an_earlier_start_brings_and_says_where_that_is_nothing() {
        signedFor(monday, department.submittedSmall(1, "28"));
        assertThat(reasons(small(2)))
                .contains("version 2 is signed to come into force at " + monday
                        + ": if this change starts sooner, it brings into force, earlier than signed: " + MIDDLE);
        assertThat(reasons(department.submittedSmall(2, "27")))
                .contains("version 2 is signed to come into force at " + monday
                        + ": if this change starts sooner, that version never answers");
    }

    private List<String> reasons(Change change) {
        return desk.assessment(change.id()).orElseThrow().findings().stream()
                .map(Finding::reason)
                .toList();
    }

    private Impact impact(Change change) {
        return desk.assessment(change.id()).orElseThrow().impact();
    }

    /** The thinnest row from 25 to 27 mAs: 0.33 dB. */
    private Change small(int base) {
        return department.submitted(
                department.put(department.opened(base), row(12, 18).withMAs("27")));
    }

    /** The middle row from 25 to 40 mAs, 2.04 dB, with the physicist's concurrence. */
    private Change large(int base) {
        return concurred(department.submittedSmall(base, "40"));
    }

    private Change concurred(Change change) {
        return done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
    }

    private void signedFor(Instant start, Change change) {
        done(sign(change, Optional.of(start)));
    }

    private void signedForWithPhysicist(Instant start, Change change) {
        signedFor(start, concurred(change));
    }

    private Outcome sign(Change change, Optional<Instant> start) {
        return desk.sign(
                department.lead,
                change.id(),
                revision(change),
                MEANING,
                start,
                department.impact(change),
                Optional.empty());
    }

    private int answering(Instant at) {
        return department.charts.inForce("r1", at).orElseThrow().head().number();
    }
}
