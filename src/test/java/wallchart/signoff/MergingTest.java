package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.signoff.Edits.AdjustmentsEdit;
import wallchart.signoff.RowEdit.Kind;

/** A change made on version 1, held against version 2 that somebody else published meanwhile. */
class MergingTest {

    private static final Row THIN = aRow().withBand(10, 18).row();
    private static final Row MIDDLE = aRow().withBand(18, 24).row();
    private static final Row THICK = aRow().withBand(24, 30).row();
    private static final Row OTHER_PART =
            aRow().of("KNEE", "ap").withBand(10, 13).row();
    private static final ChartContent ONE = chart(THIN, MIDDLE, OTHER_PART);
    private static final Change CHANGE = new Change.Drafting(new ChangeHead(
            12,
            "r1",
            "Title",
            "A reason that is long enough",
            1,
            ChangeKind.ORDINARY,
            Optional.empty(),
            new Signatory(3, "Pat"),
            Instant.EPOCH,
            1));

    private static ChartContent chart(Row... rows) {
        return new ChartContent(List.of(rows), List.of());
    }

    private static Row stronger(Row row) {
        return aRow().of(
                        row.key().examination().bodyPart(),
                        row.key().examination().projection())
                .withBand(
                        row.key().band().from().centimetres().intValue(),
                        row.key().band().to().centimetres().intValue())
                .withMAs("40")
                .row();
    }

    private static Proposal merged(ChartContent two, RowEdit... edits) {
        return new Merging(2, two, Map.of(1, ONE)::get).of(CHANGE, new Edits(List.of(edits), Optional.empty()));
    }

    @Test
    void on_the_version_it_was_made_on_nothing_conflicts() {
        var edits = new Edits(List.of(new RowEdit(Kind.AMEND, stronger(MIDDLE), 1)), Optional.empty());
        var proposal = new Merging(1, ONE, Map.<Integer, ChartContent>of()::get).of(CHANGE, edits);
        assertThat(proposal.conflicts()).isEmpty();
        assertThat(proposal.after().rows()).containsExactly(THIN, stronger(MIDDLE), OTHER_PART);
    }

    @Test
    void rows_that_others_moved_stay_moved_where_the_change_does_not_touch_them() {
        var proposal = merged(chart(stronger(THIN), MIDDLE, OTHER_PART), new RowEdit(Kind.AMEND, stronger(MIDDLE), 1));
        assertThat(proposal.conflicts()).isEmpty();
        assertThat(proposal.after().rows()).containsExactly(stronger(THIN), stronger(MIDDLE), OTHER_PART);
    }

    @Test
    void a_row_that_both_touched_is_a_conflict_by_its_name() {
        var theirs = aRow().withBand(18, 24).withMAs("50").row();
        var proposal = merged(chart(THIN, theirs, OTHER_PART), new RowEdit(Kind.AMEND, stronger(MIDDLE), 1));
        assertThat(proposal.conflicts()).containsExactly(MIDDLE.key().toString());
    }

    @Test
    void a_row_that_both_made_the_same_is_none() {
        var proposal = merged(chart(THIN, stronger(MIDDLE), OTHER_PART), new RowEdit(Kind.AMEND, stronger(MIDDLE), 1));
        assertThat(proposal.conflicts()).isEmpty();
    }

    @Test
    void an_amended_row_that_others_withdrew_and_a_withdrawn_row_that_others_amended_conflict() {
        assertThat(merged(chart(THIN, OTHER_PART), new RowEdit(Kind.AMEND, stronger(MIDDLE), 1))
                        .conflicts())
                .hasSize(1);
        assertThat(merged(chart(THIN, stronger(MIDDLE), OTHER_PART), new RowEdit(Kind.WITHDRAW, MIDDLE, 1))
                        .conflicts())
                .hasSize(1);
    }

    @Test
    void a_row_that_both_withdrew_is_gone_without_a_conflict() {
        var proposal = merged(chart(THIN, OTHER_PART), new RowEdit(Kind.WITHDRAW, MIDDLE, 1));
        assertThat(proposal.conflicts()).isEmpty();
        assertThat(proposal.after().rows()).containsExactly(THIN, OTHER_PART);
    }

    @Test
    void an_added_row_stands_behind_its_examination() {
        var proposal = merged(ONE, new RowEdit(Kind.ADD, THICK, 1));
        assertThat(proposal.after().rows()).containsExactly(THIN, MIDDLE, THICK, OTHER_PART);
        assertThat(proposal.conflicts()).isEmpty();
    }

    @Test
    void a_row_that_both_added_differently_is_a_conflict() {
        var proposal = merged(chart(THIN, MIDDLE, stronger(THICK), OTHER_PART), new RowEdit(Kind.ADD, THICK, 1));
        assertThat(proposal.conflicts()).containsExactly(THICK.key().toString());
    }

    @Test
    void named_adjustments_are_one_unit() {
        var cast = aChart().with(addingKV("cast", "6")).content().adjustments();
        var theirs = aChart().with(addingKV("splint", "4")).content().adjustments();
        var edits = new Edits(List.of(), Optional.of(new AdjustmentsEdit(cast, 1)));
        var quiet = new Merging(2, ONE, Map.of(1, ONE)::get).of(CHANGE, edits);
        assertThat(quiet.conflicts()).isEmpty();
        assertThat(quiet.after().adjustments()).isEqualTo(cast);
        var both = new Merging(2, new ChartContent(ONE.rows(), theirs), Map.of(1, ONE)::get).of(CHANGE, edits);
        assertThat(both.conflicts()).containsExactly(Proposal.ADJUSTMENTS);
    }
}
