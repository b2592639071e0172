package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.row;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;
import wallchart.chart.RowBuilder;
import wallchart.quantity.Filtration;

/**
 * What the findings of a change say of beam physics. The department's chart jumps at its band edges: every row has the same kV and mAs
 * at the middle of its band.
 */
class PhysicsOfAChangeTest extends OnADesk {

    /** A technique that stays the same over 6 cm of another body part. */
    private static RowBuilder driftingKnee() {
        return row(8, 14).of("KNEE", "ap").withKV("63").withMAs("10").withMethod("fixed");
    }

    private List<Finding> findings(Change change) {
        return desk.assessment(change.id()).orElseThrow().findings();
    }

    @Test
    void what_a_change_brings_is_said_first_and_what_stood_there_last() {
        var change = department.put(department.opened(1), driftingKnee());
        change = department.put(change, row(18, 24).withNotes("measure twice"));

        var found = findings(change);

        assertThat(found.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.get(0).row()).isEqualTo("KNEE/ap/adult/table-bucky/8-14");
        assertThat(found.get(0).reason()).contains("from 8 to 14 cm the receptor exposure falls");
        assertThat(found.get(found.size() - 1).row()).startsWith("LSPINE/");
        assertThat(found.get(found.size() - 1).reason()).startsWith("as before this change: between");
    }

    @Test
    void an_examination_that_the_change_does_not_touch_is_left_out() {
        var change = department.put(department.opened(1), driftingKnee());

        assertThat(findings(change))
                .filteredOn(finding -> finding.reason().contains("receptor exposure"))
                .extracting(Finding::row)
                .containsExactly("KNEE/ap/adult/table-bucky/8-14");
    }

    @Test
    void what_blocks_stands_before_what_physics_says() {
        var change = department.put(department.opened(1), driftingKnee().withKV("200"));

        var found = findings(change);

        assertThat(found.get(0).severity()).isEqualTo(Severity.BLOCKING);
        assertThat(found).noneSatisfy(finding -> assertThat(finding.reason()).contains("falls"));
    }

    /** Such a row would be refused whenever it is asked for. */
    @Test
    void a_row_that_the_model_reaches_nowhere_keeps_the_change_from_being_handed_in() {
        var change = department.put(
                department.opened(1), row(18, 24).withMethod("attenuation").with(Filtration.parse("3.5 mm Cu")));

        assertThat(findings(change)).anySatisfy(finding -> assertThat(finding.toString())
                .startsWith("blocking: LSPINE/ap/adult/table-bucky/18-24 addedFiltration"));
        assertThat(desk.submit(department.author, change.id(), change.head().revision()))
                .isNotInstanceOf(Outcome.Done.class);
    }

    @Test
    void physics_keeps_no_change_from_being_handed_in_and_signed() {
        var change = department.submitted(
                department.put(department.opened(1), row(18, 24).withMAs("28").withMethod("fixed")));

        assertThat(findings(change)).extracting(Finding::severity).contains(Severity.CAUTION);
        assertThat(findings(change)).noneMatch(Finding::isBlocking);
        assertThat(desk.concur(department.physicist, change.id(), change.head().revision(), Optional.empty()))
                .isInstanceOf(Outcome.Done.class);
        var seen = desk.find(change.id()).orElseThrow();
        assertThat(department.sign(department.lead, seen)).isInstanceOf(Outcome.Done.class);
    }

    @Test
    void the_impact_alone_is_that_of_the_assessment() {
        var change = department.put(department.opened(1), driftingKnee());

        assertThat(desk.impact(change.id()))
                .contains(desk.assessment(change.id()).orElseThrow().impact());
        assertThat(desk.impact(99)).isEmpty();
    }

    @Test
    void of_a_signed_change_it_is_what_its_version_brought() {
        var change = department.submittedSmall(1, "28");
        assertThat(department.sign(department.lead, change)).isInstanceOf(Outcome.Done.class);

        assertThat(findings(change))
                .filteredOn(finding -> finding.reason().contains("before this change"))
                .isNotEmpty();
    }
}
