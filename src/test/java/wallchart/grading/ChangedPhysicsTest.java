package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.grading.GradingFixtures.CHECK;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.anHonestRow;
import static wallchart.grading.GradingFixtures.chart;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;
import wallchart.chart.RowBuilder;

/** What a change brings, what it does away with, and what stood there before. */
class ChangedPhysicsTest {

    private static final RowBuilder THIN = anHonestRow(12, 18);
    private static final RowBuilder MIDDLE = anHonestRow(18, 24);
    private static final RowBuilder JUMPING = aRow(18, 24).withMAs("8");
    private static final RowBuilder DRIFTING_KNEE =
            aRow(8, 14).of("KNEE", "ap").withKV("63").withMethod("fixed");

    private static ChangedPhysics change(ChartContent before, ChartContent after) {
        return CHECK.compare(ROOM, before, after);
    }

    @Test
    void a_mistake_that_the_change_brings_is_said_in_full() {
        var changed = change(chart(THIN, MIDDLE), chart(THIN, JUMPING));

        assertThat(changed.brought()).hasSize(1);
        assertThat(changed.brought().get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(changed.brought().get(0).reason())
                .contains("between 17.9 and 18.1 cm")
                .doesNotContain("before");
        assertThat(changed.asBefore()).isEmpty();
    }

    @Test
    void a_mistake_in_an_examination_that_the_change_does_not_touch_is_not_said() {
        var changed = change(chart(THIN, MIDDLE, DRIFTING_KNEE), chart(THIN, JUMPING, DRIFTING_KNEE));

        assertThat(changed.brought()).extracting(Finding::row).allMatch(row -> row.startsWith("LSPINE"));
        assertThat(changed.asBefore()).isEmpty();
    }

    @Test
    void a_mistake_that_stood_there_before_is_said_last_as_such() {
        var changed = change(chart(THIN, JUMPING), chart(THIN, JUMPING.copy().withNotes("measure twice")));

        assertThat(changed.brought()).isEmpty();
        assertThat(changed.asBefore()).extracting(Finding::reason).allSatisfy(reason -> assertThat(reason)
                .startsWith("as before this change: between"));
    }

    @Test
    void a_mistake_that_the_change_makes_larger_says_what_it_was() {
        var changed = change(chart(THIN, JUMPING), chart(THIN, JUMPING.copy().withMAs("4")));

        assertThat(changed.brought()).hasSize(1);
        assertThat(changed.brought().get(0).reason())
                .containsPattern("before this change [+-]\\d(\\.\\d)? dB at 18 cm");
    }

    @Test
    void a_mistake_that_the_change_mends_is_a_note() {
        var changed = change(chart(THIN, JUMPING), chart(THIN, MIDDLE));

        assertThat(changed.brought()).hasSize(1);
        assertThat(changed.brought().get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(changed.brought().get(0).reason()).startsWith("this change does away with: ");
    }

    @Test
    void named_adjustments_move_no_prediction() {
        var rows = chart(THIN, JUMPING);
        var adjusted = new ChartContent(rows.rows(), List.of(ChartFixtures.addingKV("plaster", "6")));

        assertThat(change(rows, adjusted)).isEqualTo(ChangedPhysics.NOTHING);
    }

    @Test
    void a_withdrawn_row_touches_its_examination() {
        assertThat(change(chart(THIN, JUMPING), chart(THIN)).brought())
                .extracting(Finding::reason)
                .anySatisfy(reason -> assertThat(reason).contains("does away with"));
        assertThat(change(chart(THIN), ChartContent.EMPTY)).isEqualTo(ChangedPhysics.NOTHING);
    }
}
