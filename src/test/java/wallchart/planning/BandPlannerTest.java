package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.planning.PlanningFixtures.MODEL;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.bands;
import static wallchart.planning.PlanningFixtures.chart;
import static wallchart.planning.PlanningFixtures.drawn;
import static wallchart.planning.PlanningFixtures.plan;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.Regression;
import wallchart.chart.RowKey;
import wallchart.equipment.Chamber;
import wallchart.planning.BandPlan.Kind;
import wallchart.quantity.PartThickness;
import wallchart.technique.Arrangement;

/** Bands from one proven technique: lumbar spine AP, 75 kV, 25 mAs at 21 cm. */
class BandPlannerTest {

    private static final Arrangement HOW = Arrangement.find(ROOM, aRow().row()).orElseThrow();

    private static double signal(double kV, double mAs, double thickness) {
        return MODEL.signalPerMAs(HOW, kV, thickness) * mAs;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_band_keeps_the_signal_of_the_proven_technique_and_its_factors_make_its_mas(Kind kind) {
        double proven = signal(75, 25, 21);
        var proposal = drawn(plan(aRow(), bands(kind, "14", "28", "2")));
        assertThat(proposal.rows()).hasSize(7);
        for (var band : proposal.rows()) {
            double thickness = band.row().referenceThickness().inCentimetres();
            double set = band.row().setting().kV().inKilovolts();
            assertThat(signal(set, band.exactMAs(), thickness)).isCloseTo(proven, within(proven * 1e-9));
            assertThat(25 * Factor.product(band.factors())).isCloseTo(band.exactMAs(), within(1e-9));
            double station = band.row().setting().control().mAs().inMilliampereSeconds();
            assertThat(10 * Math.log10(station / band.exactMAs())).isCloseTo(band.roundingDeviation(), within(1e-9));
            assertThat(Math.abs(band.roundingDeviation())).isLessThan(0.54);
            assertThat(band.entranceMicroGy())
                    .isCloseTo(MODEL.entrancePerMAs(HOW, set, thickness) * station, within(1e-9));
        }
    }

    @Test
    void the_band_of_the_proven_technique_itself_is_that_technique() {
        for (var kind : Kind.values()) {
            var proposal = drawn(plan(aRow(), bands(kind, "18", "24", "6")));
            var setting = proposal.rows().get(0).row().setting();
            assertThat(setting.kV()).isEqualTo(aRow().row().setting().kV());
            assertThat(setting.control()).isEqualTo(aRow().row().setting().control());
            assertThat(proposal.rows().get(0).exactMAs()).isCloseTo(25, within(1e-9));
        }
    }

    @Test
    void fixed_kv_stays_at_one_tube_voltage_and_the_mas_rises_with_thickness() {
        var rows = drawn(plan(aRow(), bands(Kind.FIXED_KV, "14", "28", "2"))).rows();
        assertThat(rows).allMatch(row -> row.row().setting().kV().inKilovolts() == 75);
        assertThat(rows)
                .extracting(row -> row.row().setting().thicknessMethod().slug())
                .containsOnly("fixed");
        assertThat(rows).extracting(ProposedRow::exactMAs).isSorted();
        assertThat(rows)
                .allMatch(row -> row.ends().lowerDb().getAsDouble() > 0
                        && row.ends().upperDb().getAsDouble() < 0);
    }

    @Test
    void variable_kv_rises_2_kv_for_each_cm_unless_another_rate_is_given() {
        var rows = drawn(plan(aRow(), bands(Kind.VARIABLE_KV, "16", "26", "2"))).rows();
        assertThat(rows).extracting(ProposedRow::exactKV).containsExactly(67.0, 71.0, 75.0, 79.0, 83.0);
        var steeper = new BandPlan(
                Kind.VARIABLE_KV,
                Optional.of(new BigDecimal("3")),
                PartThickness.centimetres(20),
                PartThickness.centimetres(24),
                PartThickness.centimetres(2));
        assertThat(drawn(plan(aRow(), steeper)).rows())
                .extracting(ProposedRow::exactKV)
                .containsExactly(75.0, 81.0);
        assertThat(drawn(plan(aRow(), steeper))
                        .rows()
                        .get(0)
                        .row()
                        .setting()
                        .thicknessMethod()
                        .rate())
                .contains(new BigDecimal("3.00"));
    }

    @Test
    void flat_exposure_has_no_slope_inside_any_band() {
        var rows =
                drawn(plan(aRow(), bands(Kind.FLAT_EXPOSURE, "6", "36", "3"))).rows();
        assertThat(rows).hasSizeGreaterThan(7);
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.ends().lowerDb().getAsDouble()).isCloseTo(0, within(1e-9));
            assertThat(row.ends().upperDb().getAsDouble()).isCloseTo(0, within(1e-9));
        });
    }

    /** Water that doubles the mAs at 80 kV behind 3 mm Al and a 10:1 grid, around 20 cm. Figure found earlier: 5 %. */
    @Regression
    @Test
    void at_80_kv_the_mas_doubles_over_the_thickness_found_earlier() {
        var rows = drawn(plan(aRow().withKV("80"), bands(Kind.FIXED_KV, "18", "22", "2")))
                .rows();
        double growth = rows.get(1).exactMAs() / rows.get(0).exactMAs();
        assertThat(2 * Math.log(2) / Math.log(growth)).isCloseTo(3.5, within(0.05 * 3.5));
    }

    @Test
    void a_fixed_kv_plan_says_how_steep_it_falls_and_which_bands_keep_it_within_1_db() {
        var wide = drawn(plan(aRow(), bands(Kind.FIXED_KV, "18", "26", "4")));
        var words = String.join(" ", wide.assumptions());
        var widest = Pattern.compile("at most ([0-9.]+) dB for each cm: bands of ([0-9.]+) cm keep it within 1 dB")
                .matcher(words);
        assertThat(widest.find()).as(words).isTrue();
        var kept = drawn(plan(aRow(), bands(Kind.FIXED_KV, "18", "26", widest.group(2))));
        assertThat(kept.rows())
                .allMatch(row -> row.ends().lowerDb().getAsDouble()
                                - row.ends().upperDb().getAsDouble()
                        <= 1);
        assertThat(wide.rows())
                .anyMatch(row -> row.ends().lowerDb().getAsDouble()
                                - row.ends().upperDb().getAsDouble()
                        > 1);
    }

    @Test
    void the_last_band_ends_where_the_range_ends() {
        assertThat(drawn(plan(aRow(), bands(Kind.FIXED_KV, "18", "26", "3"))).rows())
                .extracting(row -> row.row().key().band().toString())
                .containsExactly("18-21", "21-24", "24-26");
    }

    @Test
    void what_the_model_or_the_console_cannot_do_is_left_out_and_named_and_never_invented() {
        var thick = drawn(plan(aRow(), bands(Kind.FIXED_KV, "20", "44", "4")));
        assertThat(thick.rows())
                .extracting(row -> row.row().key().band().toString())
                .doesNotContain("36-40", "40-44");
        assertThat(thick.leftOut()).anySatisfy(left -> assertThat(left.row() + ": " + left.reason())
                .contains("36-40: not predicted: the thickness is 38 cm"));

        var much = drawn(plan(aRow().withMAs("200"), bands(Kind.FIXED_KV, "18", "30", "3")));
        assertThat(much.leftOut())
                .anySatisfy(left -> assertThat(left.reason()).contains("lies outside the generator", "500 mAs"));

        var high = drawn(plan(aRow().withKV("130").withMAs("2"), bands(Kind.VARIABLE_KV, "21", "33", "3")));
        assertThat(high.leftOut()).anySatisfy(left -> assertThat(left.reason()).contains("150 kV"));
    }

    @Test
    void rating_longest_time_and_window_of_the_row_hold_for_every_band() {
        var quick = drawn(plan(aRow().withLongestTime("100"), bands(Kind.FIXED_KV, "18", "30", "3")));
        assertThat(quick.rows()).isNotEmpty();
        assertThat(quick.leftOut()).anySatisfy(left -> assertThat(left.reason()).contains("longest time 100 ms"));

        var window = drawn(plan(aRow().withKVWindow("70", "80"), bands(Kind.VARIABLE_KV, "15", "27", "3")));
        assertThat(window.rows())
                .extracting(row -> row.row().key().band().toString())
                .containsExactly("18-21", "21-24");
        assertThat(window.leftOut().get(0).reason()).contains("the row's kV window, which begins at 70 kV");
    }

    @Test
    void bands_of_the_examination_in_its_way_are_withdrawn_and_it_says_so() {
        var before = chart(
                aRow().withBand(12, 18),
                aRow().withBand(18, 24),
                aRow().withBand(24, 30),
                aRow().of("LSPINE", "lateral").withBand(18, 24));
        var proposal = drawn(plan(ROOM, before, aRow(), bands(Kind.FIXED_KV, "18", "26", "2")));
        assertThat(proposal.withdrawn())
                .extracting(RowKey::toString)
                .containsExactly("LSPINE/ap/adult/table-bucky/18-24", "LSPINE/ap/adult/table-bucky/24-30");
        assertThat(proposal.statement()).contains("Withdraws the bands in its way: 18-24 cm, 24-30 cm");
        var same = drawn(plan(ROOM, before, aRow(), bands(Kind.FIXED_KV, "18", "24", "6")));
        assertThat(same.withdrawn()).isEmpty();
        assertThat(same.kind(same.rows().get(0))).isEqualTo(ChartProposal.Kind.AMEND);
    }

    @Test
    void it_states_its_assumptions_and_the_limits_of_the_model() {
        var proposal = drawn(plan(aRow(), bands(Kind.FIXED_KV, "18", "24", "2")));
        assertThat(String.join(" ", proposal.assumptions()))
                .contains("75 kV with 25 mAs at 21 cm", "output measured 2026-01-14", "slab of water", "40 to 150 kV");
        assertThat(proposal.statement()).contains("75 kV with 25 mAs at 21 cm", "slab of water");
        assertThat(proposal.statement().length()).isLessThan(1500);
    }

    @Test
    void an_aec_row_and_one_that_the_room_cannot_make_are_nothing_to_start_from() {
        var automatic = aRow().withAec(0, "100", Chamber.CENTRE);
        assertThat(plan(automatic, bands(Kind.FIXED_KV, "18", "24", "2")))
                .isInstanceOfSatisfying(Planned.Refused.class, refused -> assertThat(
                                refused.why().problems().get(0).message())
                        .contains("AEC", "start from a technique with mAs"));
        assertThat(plan(aRow().withGrid("g99"), bands(Kind.FIXED_KV, "18", "24", "2")))
                .isInstanceOf(Planned.Refused.class);
        assertThat(plan(aRow().withKV("39"), bands(Kind.FIXED_KV, "18", "24", "2")))
                .isInstanceOf(Planned.Refused.class);
    }

    @Test
    void a_plan_of_too_many_bands_or_of_none_is_refused_naming_the_limit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bands(Kind.FIXED_KV, "0", "31", "0.5"))
                .withMessageContaining("more than 60");
        assertThatIllegalArgumentException().isThrownBy(() -> bands(Kind.FIXED_KV, "24", "24", "2"));
        assertThatIllegalArgumentException().isThrownBy(() -> bands(Kind.FIXED_KV, "18", "24", "0"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BandPlan(
                        Kind.FIXED_KV,
                        Optional.of(BigDecimal.TEN),
                        PartThickness.centimetres(1),
                        PartThickness.centimetres(2),
                        PartThickness.centimetres(1)))
                .withMessageContaining("only variable-kv has a rate");
    }
}
