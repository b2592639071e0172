package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.manual;
import static wallchart.technique.TechniqueFixtures.step;

import org.junit.jupiter.api.Test;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** One answer from the row to the dose, each number worked out by hand. */
class ExampleAnswerTest {

    private static final Room ROOM = EquipmentFixtures.aRoom()
            .withGenerator(TechniqueFixtures.aConsole("8 10 12.5 16 20", "50 100 160 200 250 320 400 500"))
            .room();

    private static final RowBuilder KNEE = ChartFixtures.aRow()
            .of("KNEE", "ap")
            .at(SupportKind.TABLE_BUCKY)
            .withBand(10, 13)
            .withKV("63")
            .withMAs("10")
            .withSid("100")
            .with(FocalSpotName.SMALL)
            .withReceptor("dr1", "24x30");

    private final Technique technique =
            found(ROOM, KNEE, aQuery().of(KNEE.row()).ofThickness("12.4").atSid("112"));

    @Test
    void the_exact_technique_is_64_8_kv_and_12_544_mas() {
        // 63 + 2 x 0.9; 10 x 1.12^2
        assertThat(technique.exact().kV()).isCloseTo(64.8, within(1e-12));
        assertThat(technique.exact().mAs()).isCloseTo(12.544, within(1e-12));
    }

    @Test
    void what_to_set_is_65_kv_12_5_mas_250_ma_50_ms() {
        // small focal spot, up to 100 ms 32 kW: 320 mA is 20.8 kW but 500 mA 32.5 kW; 400 mA is 26 kW
        var set = manual(technique);
        assertThat(set.kV()).isEqualTo(TubeVoltage.kilovolts(65));
        assertThat(set.mAs()).isEqualTo(CurrentTimeProduct.milliampereSeconds("12.5"));
        assertThat(set.focalSpot()).isEqualTo(FocalSpotName.SMALL);
        assertThat(set.mA()).isEqualTo(TubeCurrent.milliamperes(400));
        assertThat(set.time()).isEqualTo(ExposureTime.milliseconds("31.25"));
    }

    @Test
    void with_250_milliamperes_at_most_it_takes_50_ms() {
        var room = EquipmentFixtures.aRoom()
                .withGenerator(TechniqueFixtures.aConsole("8 10 12.5 16 20", "50 100 160 200 250"))
                .room();
        var set = manual(
                found(room, KNEE, aQuery().of(KNEE.row()).ofThickness("12.4").atSid("112")));
        assertThat(set.mA()).isEqualTo(TubeCurrent.milliamperes(250));
        assertThat(set.time()).isEqualTo(ExposureTime.milliseconds(50));
    }

    @Test
    void rounding_moves_the_receptor_exposure_by_0_05_decibels() {
        // at 65 kV 12.544 x (64.8/65)^4.9595 = 12.354 mAs; 10 log10(12.5 / 12.354) = 0.051
        assertThat(technique.roundingDeviation()).isCloseTo(0.051, within(0.0005));
        assertThat(step(technique, "kv-station").mAs()).isCloseTo(12.354, within(0.0005));
    }

    @Test
    void the_steps_stand_in_order_in_words_and_numbers() {
        assertThat(technique.steps())
                .extracting(Step::rule)
                .containsExactly(
                        "row",
                        "thickness",
                        "grid",
                        "distance",
                        "kv-station",
                        "mas-station",
                        "current-and-time",
                        "dose");
        assertThat(step(technique, "row").text())
                .isEqualTo("KNEE/ap/adult/table-bucky/10-13: 63 kV, 10 mAs at 11.5 cm, SID 100 cm, grid g10");
        assertThat(step(technique, "thickness").text()).isEqualTo("2 kV per cm x 0.9 cm");
        assertThat(step(technique, "grid").text()).isEqualTo("grid g10 as in the row");
        assertThat(step(technique, "distance").text()).isEqualTo("SID 112 cm instead of 100 cm: (112/100)^2");
        assertThat(step(technique, "kv-station").text())
                .isEqualTo("64.8 kV to the nearest kV station, 65 kV; the mAs keeps the receptor exposure (15 % rule)");
        assertThat(step(technique, "mas-station").text()).isEqualTo("nearest mAs station, +0.05 dB");
        assertThat(step(technique, "current-and-time").text()).isEqualTo("400 mA for 31.25 ms on the small focal spot");
        assertThat(step(technique, "dose").text())
                .startsWith("output measured 2026-01-14, 12.5 mAs, focus-skin 93.6 cm, backscatter 1.");
    }

    @Test
    void a_kv_that_is_a_station_is_said_to_be_one() {
        var atReference = found(ROOM, KNEE, aQuery().of(KNEE.row()).ofThickness("11.5"));
        assertThat(step(atReference, "kv-station").text()).isEqualTo("63 kV is a kV station");
    }

    @Test
    void every_step_carries_the_numbers_reached() {
        assertThat(step(technique, "thickness").kV()).isCloseTo(64.8, within(1e-12));
        assertThat(step(technique, "thickness").mAs()).isEqualTo(10);
        assertThat(step(technique, "distance").mAs()).isCloseTo(12.544, within(1e-12));
        assertThat(step(technique, "mas-station").kV()).isEqualTo(65);
        assertThat(step(technique, "mas-station").mAs()).isEqualTo(12.5);
    }

    @Test
    void it_says_which_version_and_row_it_comes_from_and_what_it_heats() {
        assertThat(technique.chart().number()).isEqualTo(1);
        assertThat(technique.situation().row()).isEqualTo(KNEE.row());
        assertThat(technique.situation().gridName()).isEqualTo("g10");
        assertThat(technique.heatUnits()).isCloseTo(65 * 12.5 * 1.4, within(1e-9));
    }
}
