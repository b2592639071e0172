package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.grading.GradingFixtures.CHECK;
import static wallchart.grading.GradingFixtures.PHYSICS;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.chart;
import static wallchart.grading.GradingFixtures.checked;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.chart.ChartContent;
import wallchart.chart.Finding.Severity;
import wallchart.chart.RowBuilder;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.ReferenceLevel.Quantity;

/** Rows whose path is mostly lung: nothing is predicted along or behind water, what reaches the skin is. */
class MostlyLungRowsTest {

    private static final String LUNG = "mostly lung: a slab of water does not stand for it";

    private static RowBuilder chest(int from, int to) {
        return aRow(from, to).of("CHEST", "pa").withKV("120").withMAs("2").withMethod("mas-per-cm", "7");
    }

    @ParameterizedTest
    @ValueSource(strings = {"CHEST", "RIB", "STERNUM", "CHESTABDOMEN"})
    void a_chest_has_no_curve_and_says_why(String bodyPart) {
        var checked = checked(chest(18, 24).of(bodyPart, "ap"), chest(24, 30).of(bodyPart, "ap"));

        assertThat(checked.reference()).isEmpty();
        assertThat(checked.rows()).allSatisfy(row -> {
            assertThat(row.curve()).isEmpty();
            assertThat(row.notPredicted()).hasSize(1);
            assertThat(row.notPredicted().get(0).reason()).startsWith(LUNG);
        });
    }

    @Test
    void no_rule_of_a_chest_is_graded_behind_water() {
        var grades = checked(chest(18, 24)).rows().get(0).grades();

        assertThat(grades).extracting(Grade::rule).contains(Grade.Rule.values());
        assertThat(grades).allSatisfy(grade -> {
            assertThat(grade.verdict()).isEqualTo(Verdict.NOT_PREDICTED);
            assertThat(grade.instead()).isEmpty();
            assertThat(grade.text()).startsWith("not predicted: " + LUNG);
        });
    }

    /** The same rows of the lumbar spine jump by 10 dB and drift. */
    @Test
    void a_chest_neither_jumps_nor_drifts_as_water() {
        var thin = aRow(12, 18).withMethod("fixed");
        var thick = aRow(18, 24).withMethod("fixed").withMAs("200");
        assertThat(checked(thin, thick).findings()).isNotEmpty();

        assertThat(checked(thin.copy().of("CHEST", "ap"), thick.copy().of("CHEST", "ap"))
                        .findings())
                .isEmpty();
    }

    @Test
    void a_chest_that_follows_the_attenuation_of_water_is_a_caution() {
        var found = checked(
                        chest(18, 21).withMethod("attenuation"),
                        chest(21, 24),
                        chest(24, 27).withMethod("attenuation"))
                .findings();

        assertThat(found).extracting(PhysicsFinding::kind).containsExactly(Kind.LUNG_AS_WATER);
        assertThat(found.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.get(0).row()).isEqualTo("CHEST/pa/adult/table-bucky/18-21");
        assertThat(found.get(0).field()).isEqualTo("thicknessMethod");
        assertThat(found.get(0).reason())
                .contains("18-21 cm", "24-27 cm", LUNG, "thin patients get too little and thick ones too much")
                .doesNotContain("21-24 cm");
        assertThat(checked(aRow(18, 24)).findings()).isEmpty();
    }

    @Test
    void a_change_that_brings_such_a_chest_is_told_so() {
        var changed =
                CHECK.compare(ROOM, ChartContent.EMPTY, chart(chest(18, 24).withMethod("attenuation")));

        assertThat(changed.brought()).hasSize(1);
        assertThat(changed.brought().get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(changed.brought().get(0).reason()).contains(LUNG);
    }

    @Test
    void what_a_chest_costs_at_the_skin_stands_beside_its_level_without_offers() {
        var level = new ReferenceLevel(
                "CHEST",
                "pa",
                "adult",
                Quantity.ENTRANCE_SURFACE_AIR_KERMA,
                new BigDecimal("50"),
                LevelUnit.MICROGRAY,
                2020,
                "invented for a test");
        var checked = new ChartPhysics(PHYSICS, List.of(level), PhysicsLimits.DEFAULTS)
                .check(ROOM, chart(chest(18, 24).withKV("75").withMAs("20")))
                .examinations()
                .get(0);

        assertThat(checked.rows().get(0).dose()).isPresent();
        assertThat(checked.find(Kind.OVER_KERMA_LEVEL).orElseThrow().reason())
                .contains("over the site's reference level of 50 uGy")
                .doesNotContain("as much at the receptor");
        assertThat(checked.offers()).isEmpty();
    }

    @Test
    void the_limits_name_the_parts_that_are_left_out() {
        assertThat(CHECK.check(ROOM, chart(chest(18, 24))).holds())
                .anySatisfy(sentence -> assertThat(sentence).contains("chest, ribs and sternum are mostly lung"));
    }
}
