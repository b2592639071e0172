package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.grading.GradingFixtures.aLevel;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.anHonestRow;
import static wallchart.grading.GradingFixtures.beside;
import static wallchart.grading.GradingFixtures.checked;

import org.junit.jupiter.api.Test;
import wallchart.chart.Finding.Severity;
import wallchart.chart.RowBuilder;
import wallchart.chart.RowFields;
import wallchart.equipment.Chamber;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.quantity.Decimals;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel.Quantity;

/** An honest chart has no findings; one mistake planted in it is found, and nothing else. */
class PlantedMistakesTest {

    private static RowBuilder[] honest() {
        return GradingFixtures.honestRows().toArray(RowBuilder[]::new);
    }

    private static RowBuilder[] withMiddle(RowBuilder middle) {
        return new RowBuilder[] {anHonestRow(12, 18), middle, anHonestRow(24, 30)};
    }

    @Test
    void an_honest_chart_has_no_findings() {
        assertThat(checked(honest()).findings()).isEmpty();
        assertThat(beside(aLevel("10", LevelUnit.MILLIGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA), honest())
                        .findings())
                .isEmpty();
    }

    /** 20 mAs are 2.04 dB more than 12.5. */
    @Test
    void a_row_with_too_little_mas_jumps_at_both_its_edges() {
        var found = checked(withMiddle(aRow(18, 24).withMAs("12.5"))).findings();

        assertThat(found).hasSize(1);
        assertThat(found.get(0).kind()).isEqualTo(Kind.JUMP);
        assertThat(found.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.get(0).field()).isEqualTo("bandFromCm");
        assertThat(found.get(0).reason())
                .contains("the receptor exposure", "2 dB", "more than 1 dB")
                .containsPattern("between (17.9 and 18.1|23.9 and 24.1) cm")
                .containsPattern("also [+-]2 dB at (18|24) cm");
    }

    @Test
    void a_jump_upwards_rises_and_one_downwards_drops() {
        assertThat(checked(anHonestRow(18, 24), anHonestRow(24, 30).withMAs("200"))
                        .findings()
                        .get(0)
                        .reason())
                .contains("between 23.9 and 24.1 cm the receptor exposure rises");
        assertThat(checked(anHonestRow(18, 24), anHonestRow(24, 30).withMAs("12.5"))
                        .findings()
                        .get(0)
                        .reason())
                .contains("between 23.9 and 24.1 cm the receptor exposure drops");
    }

    @Test
    void a_technique_that_stays_the_same_over_six_centimetres_drifts() {
        var found = checked(aRow(18, 24).withMethod("fixed")).findings();

        assertThat(found).hasSize(1);
        assertThat(found.get(0).kind()).isEqualTo(Kind.SLOPE);
        assertThat(found.get(0).row()).isEqualTo("LSPINE/ap/adult/table-bucky/18-24");
        assertThat(found.get(0).reason())
                .containsPattern(
                        "from 18 to 24 cm the receptor exposure falls 0\\.[89]\\d? dB per cm, 5\\.\\d dB over the band, more than 0.5 dB")
                .contains("follow the thickness more closely");
    }

    @Test
    void a_rate_too_high_drifts_upwards() {
        assertThat(checked(aRow(18, 24).withMethod("mas-per-cm", "2"))
                        .findings()
                        .get(0)
                        .reason())
                .contains("the receptor exposure rises", "follow the thickness less closely");
    }

    /** 6 kV per cm are too much at 60 kV and too little at 120 kV: over 10 cm within the limit, in the first of them far off. */
    @Test
    void a_stretch_that_drifts_is_found_in_a_band_that_comes_out_even() {
        var found = checked(
                        aRow(12, 22).withReferenceThickness("12").withKV("60").withMethod("kv-per-cm", "6"))
                .findings();

        assertThat(found).extracting(PhysicsFinding::kind).containsExactly(Kind.SLOPE);
        assertThat(found.get(0).reason())
                .containsPattern("from 12(\\.1)? to 14(\\.1)? cm the receptor exposure rises 0\\.9\\d? dB per cm");
    }

    @Test
    void a_fixed_technique_over_two_centimetres_is_within_one_step_of_the_console() {
        assertThat(checked(aRow(20, 22).withMethod("fixed")).findings()).isEmpty();
    }

    @Test
    void a_row_over_the_level_is_named_with_quantity_figure_and_source() {
        var over = beside(aLevel("1", LevelUnit.MILLIGRAY, Quantity.INCIDENT_AIR_KERMA), honest());

        assertThat(over.findings()).extracting(PhysicsFinding::kind).containsExactly(Kind.OVER_KERMA_LEVEL);
        assertThat(over.findings().get(0).reason())
                .contains(
                        "75 kV with ",
                        "incident air kerma, without backscatter",
                        "over the site's reference level of 1 mGy (invented for a test, 2020)",
                        "a level is for patients of usual size and no limit for one",
                        "for people to weigh and not an order");
    }

    /** Entrance and incident kerma of the same row lie on either side of one level: 1.3 to 1.4 apart. */
    @Test
    void a_row_is_held_against_its_level_in_the_levels_own_quantity() {
        double entrance = checked(anHonestRow(18, 24))
                .rows()
                .get(0)
                .dose()
                .orElseThrow()
                .entrance()
                .inMilligrays();
        var between = String.valueOf(Math.round(entrance / 1.15 * 100) / 100.0);

        assertThat(beside(
                                aLevel(between, LevelUnit.MILLIGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA),
                                anHonestRow(18, 24))
                        .findings())
                .extracting(PhysicsFinding::kind)
                .containsExactly(Kind.OVER_KERMA_LEVEL);
        assertThat(beside(aLevel(between, LevelUnit.MILLIGRAY, Quantity.INCIDENT_AIR_KERMA), anHonestRow(18, 24))
                        .findings())
                .isEmpty();
    }

    @Test
    void a_level_in_the_wrong_unit_is_questioned() {
        var tooLow = beside(aLevel("10", LevelUnit.MICROGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA), honest());
        var tooHigh = beside(aLevel("1000", LevelUnit.MILLIGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA), honest());
        var area = beside(
                aLevel("95", LevelUnit.GRAY_SQUARE_CENTIMETRE, Quantity.KERMA_AREA_PRODUCT), anHonestRow(18, 24));

        assertThat(tooLow.find(Kind.DOUBTFUL_KERMA_LEVEL).orElseThrow().reason())
                .contains("times the site's reference level of 10 uGy", "check unit and quantity");
        assertThat(tooHigh.find(Kind.DOUBTFUL_KERMA_LEVEL).orElseThrow().reason())
                .containsPattern("is 1/\\d+ of the site's reference level of 1000 mGy");
        assertThat(area.findings()).extracting(PhysicsFinding::kind).containsExactly(Kind.DOUBTFUL_AREA_LEVEL);
    }

    @Test
    void an_aec_row_over_the_level_at_its_back_up_is_a_note_only() {
        var found = beside(
                        aLevel("1", LevelUnit.MILLIGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA),
                        aRow(18, 24).withMethod("fixed").withAec(0, "100", Chamber.CENTRE))
                .findings();

        assertThat(found).hasSize(1);
        assertThat(found.get(0).kind()).isEqualTo(Kind.BACKUP_OVER_KERMA_LEVEL);
        assertThat(found.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(found.get(0).reason()).contains("AEC ends the exposure", "at most", "an upper bound");
    }

    /** 0.3 dB per cm too little, so 3.6 dB from 18.5 to 30.5 cm, in bands so narrow and steps so small that none of them is noticed by itself. */
    @Test
    void many_small_steps_the_same_way_are_found_together() {
        var rows = new RowBuilder[8];
        for (int i = 0; i < rows.length; i++) {
            int from = 8 + 3 * i;
            double tooMuch = Math.pow(10, 0.3 * (20 - from - 1.5) / 10);
            var honest = Double.parseDouble(
                    RowFields.of(anHonestRow(from, from + 3).row()).get("mAs"));
            rows[i] = aRow(from, from + 3).withMAs(Decimals.significant(honest * tooMuch, 4));
        }

        var found = checked(rows).findings();

        assertThat(found).extracting(PhysicsFinding::kind).containsExactly(Kind.DRIFT);
        assertThat(found.get(0).reason())
                .contains("at 29 cm the receptor exposure is 3.6 dB less than at 18.5 cm, more than 3 dB")
                .contains("the rows together follow the thickness too little");
    }

    @Test
    void many_edges_make_one_finding_that_counts_those_it_does_not_list() {
        var rows = new RowBuilder[10];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = aRow(5 + 2 * i, 7 + 2 * i).withMethod("fixed");
        }
        assertThat(checked(rows).find(Kind.JUMP)).isEmpty(); // equal rows do not jump: the exposure falls all along
        assertThat(checked(rows).find(Kind.DRIFT)).isPresent();
        for (int i = 0; i < rows.length; i++) {
            rows[i] = rows[i].withMAs(i % 2 == 0 ? "10" : "20");
        }
        assertThat(checked(rows).find(Kind.JUMP).orElseThrow().reason()).contains("and 4 more");
    }
}
