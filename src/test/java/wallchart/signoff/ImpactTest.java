package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.signoff.SignoffFixtures.CALCULATION;
import static wallchart.signoff.SignoffFixtures.UNCALIBRATED;
import static wallchart.signoff.SignoffFixtures.aTabletopRow;
import static wallchart.signoff.SignoffFixtures.chart;
import static wallchart.signoff.SignoffFixtures.impact;
import static wallchart.signoff.SignoffFixtures.onlyRow;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.Adjustment;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.quantity.Filtration;
import wallchart.signoff.RowImpact.Kind;

/** What a reviewer is told about a change, and when a physicist has to look. */
class ImpactTest {

    @Test
    void a_shift_within_both_limits_needs_no_physicist_and_one_beyond_does() {
        assertThat(onlyRow(aTabletopRow(), aTabletopRow().withMAs("12.5")).needsPhysicist())
                .isFalse();
        assertThat(onlyRow(aTabletopRow(), aTabletopRow().withMAs("12.8")).needsPhysicist())
                .isTrue();
        assertThat(onlyRow(aTabletopRow(), aTabletopRow().withMAs("6.3")).needsPhysicist())
                .isTrue();
    }

    @Test
    void a_rise_of_kerma_alone_needs_a_physicist() {
        // 15 % less kV with twice the mAs leaves the receptor exposure and raises the entrance kerma by about half
        var row = onlyRow(aTabletopRow().withKV("69"), aTabletopRow().withMAs("20"));
        assertThat(row.exposureShiftDb()).hasValue(0);
        assertThat(row.kermaChangePercent().orElseThrow()).isGreaterThan(25);
        assertThat(row.needsPhysicist()).isTrue();
    }

    /**
     * The beam model's own vector, 20 cm of water, grid 10:1, 30x30 cm, caesium iodide, 12 degrees, 3 mm Al: 1.1121e8 at 100 kV and
     * 3.3248e8 at 150 kV, x 2.99, where the power law has 1.5^4.9595 = 7.47.
     */
    @Test
    void what_the_rule_of_thumb_calls_equal_needs_a_physicist_where_the_beam_model_does_not() {
        var row = aTabletopRow()
                .withBand(10, 30)
                .withReceptor("dr1", "30x30")
                .withGrid("g10")
                .withKV("100")
                .withMAs("75");
        var impact = CALCULATION
                .of(UNCALIBRATED, chart(row), chart(row.copy().withKV("150").withMAs("10")))
                .rows()
                .get(0);
        assertThat(impact.exposureShiftDb()).hasValue(-0.02);
        assertThat(impact.predictedShiftDb()).hasValue(-3.99); // 10 log10(3.3248 / 1.1121 x 10 / 75)
        assertThat(impact.kermaChangePercent().orElseThrow()).isNegative();
        assertThat(impact.needsPhysicist()).isTrue();
        assertThat(impact.remarks())
                .containsExactly(
                        "the beam model says -3.99 dB behind 20 cm, the 15 % rule -0.02 dB: what holds is for the"
                                + " physicist to weigh");
    }

    /** 110 kV to 138 kV at 2 mAs to 0.63 mAs: nothing by the 15 % rule; a beam model behind 20 cm of water has half. */
    @Test
    void a_chest_at_another_kv_needs_the_physicist_since_nothing_is_predicted_behind_lungs() {
        var chest = aTabletopRow().of("CHEST", "ap").withKV("110").withMAs("2");
        var moved = onlyRow(chest, chest.copy().withKV("138").withMAs("0.63"));
        assertThat(moved.exposureShiftDb()).isEmpty();
        assertThat(moved.predictedShiftDb()).isEmpty();
        assertThat(moved.needsPhysicist()).isTrue();
        assertThat(moved.remarks()).anyMatch(remark -> remark.contains("the 15 % rule alone is no comparison"));
        assertThat(onlyRow(chest, chest.copy().withMAs("2.2")).needsPhysicist()).isFalse();
    }

    @Test
    void behind_more_than_the_model_knows_the_rule_of_thumb_stands_alone() {
        var row = aTabletopRow().withBand(30, 40).withReferenceThickness("38");
        var impact = onlyRow(row, row.copy().withMAs("12.5"));
        assertThat(impact.exposureShiftDb()).hasValue(0.97);
        assertThat(impact.predictedShiftDb()).isEmpty();
        assertThat(impact.needsPhysicist()).isFalse();
    }

    @Test
    void words_alone_move_nothing() {
        var row = onlyRow(aTabletopRow(), aTabletopRow().withNotes("remove braces"));
        assertThat(row.exposureShiftDb()).hasValue(0);
        assertThat(row.kermaChangePercent()).hasValue(0);
        assertThat(row.needsPhysicist()).isFalse();
        assertThat(row.fields()).extracting("field").containsExactly("notes");
    }

    @Test
    void a_row_whose_band_changes_is_withdrawn_and_added_and_says_so() {
        var rows = impact(chart(aTabletopRow()), chart(aTabletopRow().withBand(2, 20)))
                .rows();
        assertThat(rows).extracting(RowImpact::kind).containsExactly(Kind.WITHDRAWN, Kind.ADDED);
        assertThat(rows.get(0).remarks())
                .containsExactly("added in its place: LSPINE/ap/adult/tabletop/2-20", "no row answers 0-2 cm any more");
        assertThat(rows.get(0).needsPhysicist()).isFalse();
        assertThat(rows.get(1).exposureShiftDb()).hasValue(0);
        assertThat(rows.get(1).needsPhysicist()).isFalse();
    }

    @Test
    void an_added_row_is_held_against_every_row_that_answered_in_its_band() {
        var thin = aTabletopRow().withBand(0, 10).withMAs("5");
        var thick = aTabletopRow().withBand(10, 20).withMAs("10");
        var rows =
                impact(chart(thin, thick), chart(aTabletopRow().withMAs("10"))).rows();
        assertThat(rows.get(2).exposureShiftDb()).hasValue(3.01);
        assertThat(rows.get(2).before()).contains(thin.row());
        assertThat(rows.get(2).needsPhysicist()).isTrue();
    }

    @Test
    void where_nothing_answered_before_a_physicist_has_to_look() {
        var wider = impact(chart(aTabletopRow()), chart(aTabletopRow().withBand(0, 30)))
                .rows()
                .get(1);
        assertThat(wider.remarks()).contains("no row answered 20-30 cm before: there is nothing to compare with");
        assertThat(wider.needsPhysicist()).isTrue();
        assertThat(impact(ChartContent.EMPTY, chart(aTabletopRow())).needsPhysicist())
                .isTrue();
    }

    @Test
    void what_an_aec_makes_of_other_settings_is_not_known() {
        var row = onlyRow(anAecRow(0, "100"), anAecRow(1, "100"));
        assertThat(row.exposureShiftDb()).isEmpty();
        assertThat(row.kermaChangePercent()).isEmpty();
        assertThat(row.needsPhysicist()).isTrue();
        assertThat(row.remarks())
                .containsExactly(
                        "75 kV, AEC centre, density 0, back-up 100 mAs -> 75 kV, AEC centre, density 1, back-up 100 mAs",
                        "AEC: what its settings do to receptor exposure and entrance kerma is not known");
    }

    @Test
    void less_kv_under_aec_is_not_told_as_less_kerma() {
        // common practice, no source: the chamber waits for its signal, so less kV is more mAs and more skin dose
        var row = onlyRow(anAecRow(0, "100"), anAecRow(0, "100").withKV("70"));
        assertThat(row.kermaChangePercent()).isEmpty();
        assertThat(row.needsPhysicist()).isTrue();
    }

    @Test
    void a_manual_row_put_under_aec_costs_at_most_its_back_up() {
        var row = onlyRow(aManualBuckyRow(), anAecRow(0, "32"));
        assertThat(row.kermaChangePercent()).hasValue(28);
        assertThat(row.remarks()).contains("entrance kerma compared at the back-up: an upper bound");
    }

    @Test
    void another_back_up_leaves_an_aec_exposure_and_moves_its_upper_bound() {
        var row = onlyRow(anAecRow(0, "100"), anAecRow(0, "125"));
        assertThat(row.exposureShiftDb()).hasValue(0);
        assertThat(row.kermaChangePercent()).hasValue(25);
        assertThat(row.needsPhysicist()).isFalse();
    }

    @Test
    void a_filter_and_a_lost_grid_leave_nothing_to_compute() {
        assertThat(onlyRow(aTabletopRow(), aTabletopRow().with(Filtration.parse("1 mm Al")))
                        .needsPhysicist())
                .isTrue();
        var lost = onlyRow(aTabletopRow().withGrid("g99"), aTabletopRow());
        assertThat(lost.remarks()).containsExactly("at 10 cm the old row cannot be worked out in room r1");
        assertThat(lost.needsPhysicist()).isTrue();
    }

    @Test
    void an_adjustment_is_judged_on_the_rows_it_is_asked_with() {
        assertThat(adjusted(timesMAs("cast", "1.5"), timesMAs("cast", "3"))).satisfies(cast -> {
            assertThat(cast.exposureShiftDb()).hasValue(3.01);
            assertThat(cast.needsPhysicist()).isTrue();
        });
        assertThat(adjusted(addingKV("cast", "5"), addingKV("cast", "6")).needsPhysicist())
                .isFalse();
    }

    @Test
    void the_digest_is_the_same_for_the_same_change_and_another_for_any_other() {
        var base = chart(aTabletopRow());
        var digest = impact(base, chart(aTabletopRow().withMAs("12.5"))).digest();
        assertThat(digest).matches("sha256:[0-9a-f]{64}");
        assertThat(impact(base, chart(aTabletopRow().withMAs("12.5"))).digest()).isEqualTo(digest);
        assertThat(impact(base, chart(aTabletopRow().withMAs("12.5").withNotes("x")))
                        .digest())
                .isNotEqualTo(digest);
        assertThat(impact(base, chart(aTabletopRow().withMAs("12.6"))).digest()).isNotEqualTo(digest);
    }

    private static RowBuilder aManualBuckyRow() {
        return ChartFixtures.aRow().withMAs("25");
    }

    private static RowBuilder anAecRow(int density, String backup) {
        return ChartFixtures.aRow().withAec(density, backup, Chamber.CENTRE);
    }

    private static AdjustmentImpact adjusted(Adjustment before, Adjustment after) {
        var rows = List.of(aTabletopRow().row());
        var adjustments = impact(new ChartContent(rows, List.of(before)), new ChartContent(rows, List.of(after)))
                .adjustments();
        assertThat(adjustments).hasSize(1);
        return adjustments.get(0);
    }
}
