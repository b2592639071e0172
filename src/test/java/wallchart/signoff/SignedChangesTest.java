package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.signoff.DeskFixtures.MEANING;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;
import static wallchart.signoff.DeskFixtures.row;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.chart.Finding;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Outcome.Kind;

/** The signature, and what it takes. */
class SignedChangesTest extends OnADesk {

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
    void neither_concurrence_nor_look_outlives_new_equipment() {
        var change = department.submittedSmall(1, "40");
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        var seen = department.impact(change);
        department.rooms.install(department.physicist, aRoom().uncalibrated().document());
        assertRefused(
                desk.sign(
                        department.lead,
                        change.id(),
                        revision(change),
                        MEANING,
                        Optional.empty(),
                        seen,
                        Optional.empty()),
                Kind.IMPACT_CHANGED);
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
        var next = department.put(department.opened(2), row(18, 24).withMAs("27"));
        assertThat(desk.assessment(next.id()).orElseThrow().findings())
                .extracting(Finding::reason)
                .anyMatch(reason -> reason.contains("version 2 is signed to come into force at " + monday));
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
    void a_fast_track_change_that_waits_for_its_day_waits_for_the_physicist_too() {
        var change = department.submitted(
                department.put(department.fastTrack(1), row(18, 24).withMAs("12.5")));
        var nextWeek = Optional.of(clock().instant().plus(Duration.ofDays(7)));
        var digest = department.impact(change);
        assertRefused(
                desk.sign(department.lead, change.id(), revision(change), MEANING, nextWeek, digest, Optional.empty()),
                Kind.CONCURRENCE_NEEDED);
        assertThat(desk.find(change.id())).contains(change);
    }

    @Test
    void whoever_signs_is_told_which_thicknesses_get_no_technique_any_more() {
        var narrowed = done(desk.withdrawRow(
                department.author,
                department.opened(1).id(),
                1,
                row(24, 30).row().key()));
        assertThat(desk.assessment(narrowed.id()).orElseThrow().findings())
                .extracting(Finding::reason)
                .anyMatch(reason -> reason.contains("no row answers 24-30 cm any more"));
    }

    @Test
    void a_fast_track_change_that_a_physicist_concurred_with_needs_no_second_look() {
        var change = department.submitted(
                department.put(department.fastTrack(1), row(18, 24).withMAs("12.5")));
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        assertThat(((Signed) done(department.sign(department.lead, change))).secondReview())
                .isEmpty();
    }

    private int inForce(Instant at) {
        return department.charts.inForce("r1", at).orElseThrow().head().number();
    }
}
