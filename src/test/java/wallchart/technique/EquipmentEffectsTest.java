package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aGrid;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.anOutput;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.equipment.EquipmentFixtures.someSupports;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aParallelGrid;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.Validation;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.RoomBuilder;

/** What becomes of a signed chart when the physicist enters other equipment. */
class EquipmentEffectsTest {

    private static final EquipmentEffects EFFECTS = new EquipmentEffects(new ExposureModel(PHYSICS));

    private static ChartEffects effects(RowBuilder row, RoomBuilder after) {
        return EFFECTS.of(aChart().with(row).content(), aRoom().room(), after.room());
    }

    private static RowEffect only(RowBuilder row, RoomBuilder after) {
        var moved = effects(row, after).moved();
        assertThat(moved).hasSize(1);
        return moved.get(0);
    }

    /** Twice the exposure is 10 log10(2) = 3.01 dB (deviation index of IEC 62494-1:2008: DI = 10 log10(EI / EI_T)). */
    @Validation
    @Test
    void twice_the_output_is_three_decibels_and_twice_the_kerma() {
        var row = only(aRow(), aRoom().withOutput(anOutput("2026-09-14", "2")));
        assertThat(row.outputPercent()).hasValue(100);
        assertThat(row.exposureDb()).hasValue(3.01);
        assertThat(row.kermaPercent()).hasValue(100);
        assertThat(row.usable()).isTrue();
        assertThat(row.affected()).isTrue();
    }

    @Test
    void equal_equipment_moves_nothing() {
        var same = effects(aRow(), aRoom().withName("Room one"));
        assertThat(same.rows()).isOne();
        assertThat(same.moved()).isEmpty();
    }

    @Test
    void a_tenth_more_output_is_told_and_a_little_more_than_a_tenth_is_to_be_looked_at() {
        assertThat(only(aRow(), aRoom().withOutput(anOutput("2026-09-14", "1.10")))
                        .affected())
                .isFalse();
        assertThat(only(aRow(), aRoom().withOutput(anOutput("2026-09-14", "1.102")))
                        .affected())
                .isTrue();
        assertThat(only(aRow(), aRoom().withOutput(anOutput("2026-09-14", "0.898")))
                        .affected())
                .isTrue();
    }

    @Test
    void aec_keeps_the_receptor_exposure_and_the_kerma_but_not_what_its_back_up_allows() {
        var row = only(aRow().withAec(0, "100", Chamber.CENTRE), aRoom().withOutput(anOutput("2026-09-14", "0.8")));
        assertThat(row.outputPercent()).hasValue(-20);
        assertThat(row.exposureDb()).hasValue(0);
        assertThat(row.kermaPercent().orElseThrow()).isCloseTo(0, within(0.05));
        assertThat(row.affected()).isTrue();
        assertThat(row.remarks()).singleElement().asString().contains("back-up does not");
    }

    @Test
    void more_filtration_lowers_output_and_skin_more_than_receptor() {
        var tube = aTube();
        var filtered = new TubePart(tube.anodeAngleDeg(), number("5.0"), null, tube.focalSpots(), tube.output());
        var row = only(aRow(), aRoom().withTube(filtered));
        double receptor = Math.pow(10, row.exposureDb().orElseThrow() / 10);
        assertThat(row.kermaPercent().orElseThrow())
                .isLessThan((receptor - 1) * 100)
                .isNegative();
        assertThat(row.affected()).isTrue();
    }

    @Test
    void a_row_that_names_what_the_room_no_longer_has_cannot_be_used() {
        var row = only(
                aRow(),
                aRoom().withGrids(List.of(aGrid("g8", "150", "110", "180")))
                        .withSupports(someSupports().stream()
                                .map(EquipmentEffectsTest::withoutG10)
                                .toList()));
        assertThat(row.usable()).isFalse();
        assertThat(row.affected()).isTrue();
        assertThat(row.exposureDb()).isEmpty();
        assertThat(row.remarks()).singleElement().asString().contains("g10");
    }

    private static SupportPart withoutG10(SupportPart support) {
        return new SupportPart(
                support.kind(),
                support.receptorGapCm(),
                support.sidCm(),
                support.kind().equals("table-bucky") ? List.of("none") : support.grids(),
                support.receptors(),
                support.aecChambers());
    }

    @Test
    void a_station_that_is_gone_is_named_with_the_one_that_is_set_instead() {
        var row = only(aRow(), aRoom().withGenerator(aConsole("10 20 32 50", "100 200 400")));
        assertThat(row.remarks()).singleElement().asString().contains("20 mAs").contains("was set as 75 kV, 25 mAs");
        assertThat(row.affected()).isTrue();
        assertThat(row.exposureDb()).hasValue(-0.97); // 10 log10(20/25)
    }

    @Test
    void a_rating_that_is_exceeded_is_a_row_that_cannot_be_set() {
        var row = only(
                aRow().with(FocalSpotName.SMALL).withMAs("100"),
                aRoom().withGenerator(aConsole("50 100 200", "400 500")));
        assertThat(row.usable()).isFalse();
        assertThat(row.remarks()).singleElement().asString().contains("within its rating");
    }

    @Test
    void a_distance_that_the_measured_focal_range_leaves_out_is_named() {
        var row = only(
                aRow(), aRoom().withGrids(List.of(aGrid("g10", "100", "95", "105"), aGrid("g8", "150", "110", "180"))));
        assertThat(row.remarks())
                .containsExactly("SID 110 cm lies outside the focal range of grid g10 now, 95 to 105 cm");
        assertThat(row.affected()).isTrue();
        assertThat(row.exposureDb()).hasValue(0);
    }

    @Test
    void beyond_the_limits_of_the_model_the_output_is_told_and_nothing_else_predicted() {
        var thick = aRow().withBand(36, 44);
        var row = only(thick, aRoom().withOutput(withHalfValueLayer(anOutput("2026-09-14", "1.2"), "3.3")));
        assertThat(row.outputPercent()).hasValue(20);
        assertThat(row.exposureDb()).isEmpty();
        assertThat(row.kermaPercent()).isEmpty();
        assertThat(row.affected()).isTrue();
        assertThat(row.remarks())
                .singleElement()
                .asString()
                .contains("not predicted")
                .contains("36");
        assertThat(effects(thick, aRoom().withName("Room one")).moved()).isEmpty();
    }

    /** The same beam with more of it: what lies behind which thickness does not matter. */
    @Test
    void where_the_output_alone_differs_every_thickness_goes_with_it() {
        var thick = only(aRow().withBand(36, 44), aRoom().withOutput(anOutput("2026-09-14", "2")));
        assertThat(thick.exposureDb()).hasValue(3.01);
        assertThat(thick.kermaPercent()).hasValue(100);
    }

    /** The shorter way of the same beam and the longer way through the model meet. */
    @Test
    void a_half_value_layer_of_a_hundredth_more_changes_next_to_nothing() {
        var same = only(aRow(), aRoom().withOutput(anOutput("2026-09-14", "1.25")));
        var nearly = only(aRow(), aRoom().withOutput(withHalfValueLayer(anOutput("2026-09-14", "1.25"), "3.11")));
        assertThat(nearly.exposureDb().orElseThrow())
                .isCloseTo(same.exposureDb().orElseThrow(), within(0.02));
        assertThat(nearly.kermaPercent().orElseThrow())
                .isCloseTo(same.kermaPercent().orElseThrow(), within(0.3));
    }

    private static OutputPart withHalfValueLayer(OutputPart output, String mmAl) {
        return new OutputPart(
                output.measuredOn(),
                output.totalFiltrationMmAl(),
                output.totalFiltrationMmCu(),
                number(mmAl),
                output.hvlAtKV(),
                output.uncertaintyPercent(),
                output.microGyPerMAsAtOneMetre());
    }

    @Test
    void the_factors_of_a_grid_are_compared_wherever_one_of_both_tabulates_them() {
        var before = aRoom().withGrids(List.of(aParallelGrid("8", "60 2", "120 4")));
        var after = aRoom().withGrids(List.of(aParallelGrid("8", "60 2", "90 3.3", "120 4")));
        var supports = aHandbookRoom().document().supports().stream()
                .map(support -> new SupportPart(
                        support.kind(),
                        support.receptorGapCm(),
                        support.sidCm(),
                        List.of("none", "g8"),
                        support.receptors(),
                        null))
                .toList();
        assertThat(GridShift.between(
                        before.withSupports(supports).room(),
                        after.withSupports(supports).room()))
                .containsExactly(new GridShift("g8", 90, 3, 3.3));
    }

    @Test
    void the_output_is_compared_wherever_one_of_both_was_measured() {
        var shifts = EFFECTS.outputs(
                aRoom().room(),
                aRoom().withOutput(anOutput("2026-09-14", "0.5")).room());
        assertThat(shifts).extracting(OutputShift::kilovolts).containsExactly(50.0, 60.0, 80.0, 100.0, 120.0, 150.0);
        assertThat(shifts).allSatisfy(shift -> assertThat(shift.ratio()).isCloseTo(0.5, within(0.001)));
        var bare = aRoom().uncalibrated().room();
        assertThat(EFFECTS.outputs(bare, bare)).isEmpty();
    }
}
