package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.anOutput;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.TODAY;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Calibrations;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** What a setting costs at the skin: from the tube's own measurement, beyond it, and without one. */
class DoseRuleTest {

    private static final Room ROOM = aRoom().room();

    private static DoseEstimate dose(Room room, RowBuilder row) {
        return found(room, row, aQuery()).dose().orElseThrow();
    }

    @Test
    void a_measured_tube_is_taken_at_its_word() {
        // 80 kV 51.3 uGy/mAs, 25 mAs, SID 110, part 21, gap 6: FSD 83 cm
        var dose = dose(ROOM, aRow().withKV("80"));
        assertThat(dose.focusSkinCentimetres()).isEqualTo(83);
        assertThat(dose.incident().micrograys()).isCloseTo(51.3 * 25 / (0.83 * 0.83), within(1e-9));
        assertThat(dose.entrance().micrograys())
                .isCloseTo(dose.incident().micrograys() * dose.backscatterFactor(), within(1e-9));
        assertThat(dose.outputSource()).isEqualTo("measured 2026-01-14");
        assertThat(dose.uncertaintyPercent()).isEqualTo(15); // sqrt(8^2 + 13^2) = 15.3
        assertThat(dose.upperBound()).isFalse();
    }

    @Test
    void the_dose_is_of_what_is_set_and_not_of_the_exact_technique() {
        var technique = found(ROOM, aRow().withKV("79.6").withMAs("28"), aQuery());
        var dose = technique.dose().orElseThrow();
        assertThat(dose.forMAs()).hasToString("25 mAs");
        assertThat(dose.incident().micrograys()).isCloseTo(51.3 * 25 / (0.83 * 0.83), within(1e-9));
    }

    @Test
    void between_measured_kv_the_output_lies_between() {
        var dose = dose(ROOM, aRow().withKV("70"));
        // ln-ln between 60 kV 29.0 and 80 kV 51.3: exponent 1.983, at 70 kV 39.37
        assertThat(dose.incident().micrograys() * 0.83 * 0.83 / 25).isCloseTo(39.37, within(0.01));
    }

    @Test
    void beyond_the_measured_kv_the_model_fitted_to_the_tube_takes_over_and_says_so() {
        var dose = dose(ROOM, aRow().withKV("45"));
        assertThat(dose.outputSource()).isEqualTo("calibrated beam model beyond 50 kV to 150 kV, measured 2026-01-14");
        var fitted = new Calibrations(PHYSICS).find(ROOM.tube()).orElseThrow();
        double modelled = PHYSICS.beam(TubeVoltage.kilovolts(45), 12, fitted.totalFiltration())
                .outputMicroGyPerMAs();
        assertThat(dose.incident().micrograys() * 0.83 * 0.83 / 25)
                .isCloseTo(modelled * fitted.outputFactorBeyond(45), within(1e-9));
    }

    @Test
    void measured_at_two_kv_only_it_is_extended_and_says_so() {
        var dose = dose(roomMeasuredAt("3.0", 2), aRow().withKV("45"));
        assertThat(dose.outputSource()).isEqualTo("measured 2026-01-14, extended beyond 50 kV to 60 kV");
        // exponent of the two points, ln(29/20.2)/ln(1.2) = 1.983; 20.2 x 0.9^1.983 = 16.39
        assertThat(dose.incident().micrograys() * 0.83 * 0.83 / 25).isCloseTo(16.39, within(0.01));
    }

    @Test
    void an_uncalibrated_tube_is_modelled_and_says_so() {
        var dose = dose(aRoom().uncalibrated().room(), aRow().withKV("80"));
        double modelled = PHYSICS.beam(TubeVoltage.kilovolts(80), 12, Filtration.aluminium("3.0"))
                .outputMicroGyPerMAs();
        assertThat(dose.incident().micrograys()).isCloseTo(modelled * 25 / (0.83 * 0.83), within(1e-9));
        assertThat(dose.outputSource()).isEqualTo("beam model, uncalibrated, +-30 %");
        assertThat(dose.uncertaintyPercent()).isEqualTo(33); // sqrt(30^2 + 13^2) = 32.7
    }

    @Test
    void added_filtration_lowers_the_measured_output_by_the_model_and_says_so() {
        var copper = new Filtration(BigDecimal.ZERO, new BigDecimal("0.1"));
        var dose = dose(ROOM, aRow().withKV("80").with(copper));
        var inBeam = new Calibrations(PHYSICS).find(ROOM.tube()).orElseThrow().totalFiltration();
        var open = PHYSICS.beam(TubeVoltage.kilovolts(80), 12, inBeam);
        var filtered = PHYSICS.beam(TubeVoltage.kilovolts(80), 12, inBeam.and(copper));
        double ratio = filtered.outputMicroGyPerMAs() / open.outputMicroGyPerMAs();
        assertThat(ratio).isBetween(0.4, 0.8);
        assertThat(dose.incident().micrograys()).isCloseTo(51.3 * ratio * 25 / (0.83 * 0.83), within(1e-9));
        assertThat(dose.outputSource())
                .isEqualTo("measured 2026-01-14, brought to 3 mm Al + 0.1 mm Cu by the calibrated beam model");
        assertThat(dose.backscatterFactor())
                .isGreaterThan(dose(ROOM, aRow().withKV("80")).backscatterFactor());
    }

    @Test
    void an_output_measured_at_another_filtration_is_brought_to_the_tubes() {
        var dose = dose(roomMeasuredAt("2.5", 6), aRow().withKV("80"));
        assertThat(dose.outputSource()).endsWith("brought to 3 mm Al by the calibrated beam model");
        assertThat(dose.incident().micrograys()).isLessThan(51.3 * 25 / (0.83 * 0.83));
    }

    @Test
    void a_filtration_the_model_does_not_reach_leaves_the_dose_out_and_the_technique_in() {
        var beyond = new Filtration(BigDecimal.ZERO, new BigDecimal("3.5"));
        assertThat(found(ROOM, aRow().with(beyond), aQuery()).dose()).isEmpty();
        var technique = found(roomMeasuredAt("0.5", 2), aRow(), aQuery());
        assertThat(technique.dose()).isEmpty();
        assertThat(technique.steps()).extracting(Step::rule).doesNotContain("dose");
    }

    private static Room roomMeasuredAt(String aluminium, int points) {
        var measured = anOutput();
        var output = new OutputPart(
                measured.measuredOn(),
                number(aluminium),
                null,
                measured.hvlMmAl(),
                measured.hvlAtKV(),
                measured.uncertaintyPercent(),
                measured.microGyPerMAsAtOneMetre().subList(0, points));
        var tube = aTube();
        return aRoom().withTube(
                        new TubePart(tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, tube.focalSpots(), output))
                .room();
    }

    @Test
    void the_sites_reference_level_stands_beside_its_own_examination_only() {
        var level = new ReferenceLevel(
                "LSPINE",
                "ap",
                "adult",
                ReferenceLevel.Quantity.ENTRANCE_SURFACE_AIR_KERMA,
                BigDecimal.TEN,
                LevelUnit.MILLIGRAY,
                1996,
                "IAEA Safety Series 115, Schedule III");
        var rules = new TechniqueRules(PHYSICS, List.of(level));
        var chart = aChart().with(aRow()).with(aRow().of("ABDOMEN", "ap")).version();
        assertThat(levelOf(rules.answer(ROOM, chart, aQuery().query(), TODAY))).contains(level);
        assertThat(levelOf(
                        rules.answer(ROOM, chart, aQuery().of("ABDOMEN", "ap").query(), TODAY)))
                .isEmpty();
    }

    private static java.util.Optional<ReferenceLevel> levelOf(Answer answer) {
        return ((Answer.Found) answer).technique().dose().orElseThrow().referenceLevel();
    }
}
