package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.grading.GradingFixtures.MODEL;
import static wallchart.grading.GradingFixtures.ROOM;
import static wallchart.grading.GradingFixtures.aLevel;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.beside;
import static wallchart.grading.GradingFixtures.chart;
import static wallchart.grading.GradingFixtures.checked;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.Arrangement;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.ReferenceLevel.Quantity;

/** What is offered for less kerma at the skin: as much at the receptor, settable, worth it, and never an order. */
class OffersTest {

    /** Every row costs more than this. */
    private static final ReferenceLevel LOW = aLevel("1", LevelUnit.MICROGRAY, Quantity.ENTRANCE_SURFACE_AIR_KERMA);

    private static final ChartPhysics BESIDE_LOW =
            new ChartPhysics(GradingFixtures.PHYSICS, List.of(LOW), PhysicsLimits.DEFAULTS);

    private static List<Offer> offers(Room room, RowBuilder row) {
        return BESIDE_LOW.check(room, chart(row)).examinations().get(0).offers();
    }

    private static ExaminationPhysics costly(RowBuilder row) {
        return BESIDE_LOW.check(ROOM, chart(row)).examinations().get(0);
    }

    private static double entrance(RowBuilder row) {
        return checked(row).rows().get(0).dose().orElseThrow().entrance().micrograys();
    }

    private static List<Offer> offersBeside(double microgray, RowBuilder row) {
        return beside(
                        aLevel(
                                String.valueOf(Math.round(microgray)),
                                LevelUnit.MICROGRAY,
                                Quantity.ENTRANCE_SURFACE_AIR_KERMA),
                        row)
                .offers();
    }

    @Test
    void a_row_is_offered_something_only_where_it_costs_over_half_of_its_level() {
        var row = aRow(18, 24).withMAs("32");

        assertThat(offersBeside(entrance(row) / 0.55, row)).isNotEmpty();
        assertThat(offersBeside(entrance(row) / 0.45, row)).isEmpty();
    }

    @Test
    void beside_no_level_only_a_third_and_more_is_worth_an_offer() {
        assertThat(checked(aRow(18, 24)).offers()).isEmpty();
        assertThat(checked(aRow(10, 14)).offers()).isNotEmpty().allSatisfy(offer -> {
            assertThat(offer.grid()).isEqualTo("none");
            assertThat(offer.savedPercent()).isGreaterThanOrEqualTo(35);
        });
    }

    @Test
    void an_offer_says_what_its_saving_is_not() {
        assertThat(costly(aRow(18, 24).withMAs("32")).offers()).isNotEmpty().allSatisfy(offer -> assertThat(
                        offer.text())
                .contains(
                        "effective dose falls less than that",
                        "noise and contrast were not predicted",
                        "costs less contrast"));
    }

    @Test
    void an_offer_names_its_row_and_the_thickness_it_is_for() {
        assertThat(costly(aRow(18, 24).withMAs("32")).offers())
                .isNotEmpty()
                .allSatisfy(offer -> assertThat(offer.text()).startsWith("row of 18-24 cm, at 21 cm: "));
    }

    /** Worked out here from the model itself: equal exposure at the receptor, kerma at the skin less by a fifth and the margin. */
    @Test
    void the_least_kv_station_that_saves_a_fifth_is_offered() {
        var row = aRow(18, 24).withMAs("32");
        var how = Arrangement.find(ROOM, row.row()).orElseThrow();

        var offer = costly(row).offers().get(0);

        double kV = offer.kV().inKilovolts();
        assertThat(kermaAtEqualExposure(how, kV)).isLessThanOrEqualTo(0.80 / 1.05);
        assertThat(kermaAtEqualExposure(how, kV - 1)).isGreaterThan(0.80 / 1.05);
        assertThat(offer.savedPercent()).isCloseTo((1 - kermaAtEqualExposure(how, kV)) * 100, within(0.1));
        double mAs = 32 * MODEL.signalPerMAs(how, 75, 21) / MODEL.signalPerMAs(how, kV, 21);
        assertThat(offer.mAs()).isEqualTo(ROOM.generator().mAs().nearest(mAs));
        assertThat(offer.text()).contains("% less entrance kerma", "costs less contrast");
    }

    private static double kermaAtEqualExposure(Arrangement how, double kV) {
        return MODEL.signalPerMAs(how, 75, 21)
                / MODEL.signalPerMAs(how, kV, 21)
                * MODEL.entrancePerMAs(how, kV, 21)
                / MODEL.entrancePerMAs(how, 75, 21);
    }

    @Test
    void nothing_is_offered_beyond_the_rows_own_window() {
        assertThat(costly(aRow(18, 24).withKVWindow("70", "80")).offers()).isEmpty();
        assertThat(costly(aRow(18, 24).withKVWindow("70", "90")).offers()).isNotEmpty();
    }

    @Test
    void without_a_window_the_tube_voltage_goes_up_by_three_tenths_at_most() {
        for (var kV : List.of("60", "90", "110")) {
            assertThat(costly(aRow(18, 24).withKV(kV)).offers()).allSatisfy(offer -> assertThat(offer.kV())
                    .isLessThanOrEqualTo(
                            new TubeVoltage(number(kV).multiply(number("1.3")).setScale(1))));
        }
    }

    @Test
    void nothing_is_offered_that_the_console_cannot_do() {
        assertThat(costly(aRow(18, 24).withMAs("0.5")).offers()).isEmpty(); // less than its smallest station
        assertThat(costly(aRow(18, 24).withMAs("200").withLongestTime("20")).offers())
                .isEmpty();
    }

    @Test
    void going_without_a_grid_is_offered_for_thin_parts_only() {
        assertThat(costly(aRow(10, 14)).offers()).extracting(Offer::grid).contains("none");
        assertThat(costly(aRow(18, 24)).offers()).extracting(Offer::grid).doesNotContain("none");
        assertThat(costly(aRow(10, 14)).offers())
                .filteredOn(offer -> offer.grid().equals("none"))
                .allSatisfy(offer -> assertThat(offer.text()).contains("no grid", "costs more scatter in the image"));
    }

    @Test
    void another_grid_is_offered_where_its_focal_range_holds_the_sid() {
        var row = aRow(18, 24).withGrid("g12");

        assertThat(offers(roomWithGrid("90", "120"), row))
                .extracting(Offer::grid)
                .contains("g6");
        assertThat(offers(roomWithGrid("140", "180"), row))
                .isNotEmpty()
                .extracting(Offer::grid)
                .doesNotContain("g6");
    }

    /** A 6:1 grid beside a 12:1 grid of the table. */
    static Room roomWithGrid(String fromCm, String toCm) {
        return aRoom().withGrids(List.of(aGrid("12", "95", "130"), aGrid("6", fromCm, toCm)))
                .withSupports(List.of(new SupportPart(
                        "table-bucky",
                        number("6"),
                        new DistancesPart(number("90"), number("125"), null),
                        List.of("g12", "g6"),
                        List.of("dr1"),
                        null)))
                .room();
    }

    private static GridPart aGrid(String ratio, String fromCm, String toCm) {
        var like = EquipmentFixtures.aGrid("g" + ratio, fromCm, fromCm, toCm);
        return new GridPart(
                like.id(),
                number(ratio),
                like.linesPerCm(),
                like.focalDistanceCm(),
                like.focalRangeCm(),
                like.factors());
    }
}
