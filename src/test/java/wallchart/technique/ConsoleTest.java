package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.manual;
import static wallchart.technique.TechniqueFixtures.refused;
import static wallchart.technique.TechniqueFixtures.step;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.equipment.EquipmentDocument.FocalSpotPart;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.RatingPart;
import wallchart.equipment.EquipmentDocument.StationsPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Room;

/** From the exact technique to the console: limits, stations, current and time, each worked out by hand. */
class ConsoleTest {

    private static final Room ROOM = aHandbookRoom().room();

    @Test
    void within_the_limits_there_is_no_step_for_them() {
        var technique = found(ROOM, aHandbookRow().withKVWindow("60", "60"), aQuery().of("KNEE", "ap"));
        assertThat(technique.steps()).extracting(Step::rule).doesNotContain("kv-limits");
    }

    @ParameterizedTest(name = "{0} kV at {1} cm in a window of {2} to {3} kV is held at {4} kV")
    @CsvSource({
        "60, 20, 55, 75, 75", // 60 + 2 x 10 = 80 kV wanted
        "60, 5, 55, 75, 55", // 50 kV wanted
        "148, 12, 100, 150, 150", // 152 kV wanted, the generator ends at 150
        "148, 12, 100, 160, 150", // the window goes further than the generator
        "41, 9, 30, 60, 40", // 39 kV wanted, the generator begins at 40
    })
    void outside_the_limits_the_kv_is_held_and_the_mas_makes_up(
            String kV, double thickness, String from, String to, double held) {
        var row = aHandbookRow().withKV(kV).withKVWindow(from, to).withMethod("kv-per-cm", "2");
        var technique = found(ROOM, row, aQuery().of("KNEE", "ap").ofThickness(String.valueOf(thickness)));
        double wanted = Double.parseDouble(kV) + 2 * (thickness - 10);
        var step = step(technique, "kv-limits");
        assertThat(step.kV()).isEqualTo(held);
        assertThat(step.text()).contains("outside the limits", Words.number(wanted));
        assertThat(technique.exact()).isEqualTo(new Working(step.kV(), step.mAs()));
        assertThat(technique.exact().mAs()).isCloseTo(10 * Math.pow(wanted / held, 4.9595), within(0.001));
        assertThat(technique.cautions()).anyMatch(text -> text.contains("is the limit"));
    }

    @Test
    void a_window_without_a_station_is_refused() {
        var refusal = refused(ROOM, aHandbookRow().withKVWindow("60.2", "60.8"), aQuery().of("KNEE", "ap"));
        assertThat(refusal.detail()).contains("no kV station of room r1 lies between 60.2 and 60.8 kV");
    }

    @Test
    void a_window_beyond_the_generator_is_refused() {
        var refusal = refused(ROOM, aHandbookRow().withKVWindow("20", "30"), aQuery().of("KNEE", "ap"));
        assertThat(refusal.detail()).contains("no kV station");
    }

    @ParameterizedTest(name = "{0} kV goes to {1} kV")
    @CsvSource({"60.4, 60", "60.5, 61", "60.6, 61", "61.5, 62", "62.5, 63"})
    void the_nearest_kv_station_is_set_and_a_half_goes_up(String kV, String station) {
        var set = found(ROOM, aHandbookRow().withKV(kV), aQuery().of("KNEE", "ap"))
                .set();
        assertThat(set.kV()).hasToString(station + " kV");
    }

    @Test
    void a_half_made_of_decimal_steps_still_goes_up() {
        // 63 + 2 x 0.75 is 64.5; 0.1 steps in binary miss the half by some 1e-14 kV
        var row = aHandbookRow().withKV("59.4").withMethod("kv-per-cm", "1.1"); // 59.4 + 1.1 x 1 = 60.5
        var set = found(ROOM, row, aQuery().of("KNEE", "ap").ofThickness("11")).set();
        assertThat(set.kV()).hasToString("61 kV");
    }

    @Test
    void the_station_within_the_window_is_taken_though_one_outside_is_nearer() {
        var row = aHandbookRow().withKV("60.9").withKVWindow("60", "60.9");
        assertThat(found(ROOM, row, aQuery().of("KNEE", "ap")).set().kV()).hasToString("60 kV");
    }

    @Test
    void the_mas_keeps_the_receptor_exposure_at_the_kv_station() {
        var technique = found(ROOM, aHandbookRow().withKV("60.5"), aQuery().of("KNEE", "ap"));
        assertThat(step(technique, "kv-station").mAs()).isCloseTo(10 * Math.pow(60.5 / 61, 4.9595), within(1e-5));
        assertThat(technique.exact()).isEqualTo(new Working(60.5, 10));
    }

    @Test
    void a_tie_between_mas_stations_goes_to_the_lower() {
        var room = aHandbookRoom().withGenerator(aConsole("4 9 16", "100")).room();
        // sqrt(4 x 9) = 6 is as far from 4 as from 9, sqrt(9 x 16) = 12
        assertThat(mAsSet(room, "6")).isEqualTo("4 mAs");
        assertThat(mAsSet(room, "6.001")).isEqualTo("9 mAs");
        assertThat(mAsSet(room, "12")).isEqualTo("9 mAs");
    }

    private static String mAsSet(Room room, String mAs) {
        return found(room, aHandbookRow().withMAs(mAs), aQuery().of("KNEE", "ap"))
                .set()
                .mAs()
                .toString();
    }

    /** Small: 32 kW to 100 ms, 25 kW to 500 ms, 15 kW to 2000 ms; large: 80, 60, 35 kW. Shortest time 1 ms. */
    @ParameterizedTest(name = "{0} kV {1} mAs on the {2} focal spot: {3} mA {4} ms ({5})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            64  | 10  | SMALL | 500 | 20   | 64 x 500 is 32 kW, just the rating
            65  | 10  | SMALL | 400 | 25   | 65 x 500 is 32.5 kW, over 32
            100 | 32  | SMALL | 320 | 100  | 100 x 320 is 32 kW, and 100 ms is just within
            100 | 40  | SMALL | 250 | 160  | 320 mA takes 125 ms, where 25 kW hold; 250 mA is 25 kW
            100 | 160 | SMALL | 100 | 1600 | 160 mA is 16 kW for 1000 ms, where 15 kW hold; 100 mA is 10 kW
            60  | 0.5 | LARGE | 500 | 1    | 500 mA take just the shortest time
            150 | 50  | LARGE | 500 | 100  | 75 kW up to 100 ms
            150 | 63  | LARGE | 400 | 157.5 | 500 mA is 75 kW for 126 ms, where 60 kW hold; 400 mA is 60 kW
            """)
    void the_largest_current_within_the_rating_is_taken(
            String kV, String mAs, FocalSpotName spot, String mA, String milliseconds, String why) {
        var row = aHandbookRow().withKV(kV).withMAs(mAs).with(spot);
        var set = manual(found(ROOM, row, aQuery().of("KNEE", "ap")));
        assertThat(set.mA()).as(why).hasToString(mA + " mA");
        assertThat(set.time()).as(why).hasToString(milliseconds + " ms");
        assertThat(set.focalSpot()).isEqualTo(spot);
    }

    @Test
    void a_load_just_at_the_rating_is_allowed_though_binary_numbers_put_it_over() {
        assertThat(64.4 * 400 / 1000).isGreaterThan(25.76);
        var tube = EquipmentFixtures.aTube();
        var rating = new RatingPart(number("500"), number("25.76"));
        var spot = new FocalSpotPart("small", number("0.6"), List.of(rating));
        var part = aConsole("10", "200 400");
        var only = new StationsPart(List.of(number("64.4")), null, null, null, null);
        var room = aHandbookRoom()
                .withTube(new TubePart(tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, List.of(spot), null))
                .withGenerator(
                        new GeneratorPart(part.waveform(), only, part.mAs(), part.mA(), part.shortestTimeMs(), null))
                .room();
        var row = aHandbookRow().withKV("64.4").with(FocalSpotName.SMALL);
        assertThat(manual(found(room, row, aQuery().of("KNEE", "ap"))).mA()).hasToString("400 mA");
    }

    @Test
    void a_time_just_at_the_end_of_a_rating_is_within_it_though_binary_numbers_put_it_over() {
        assertThat(16.1 * 1000 / 161).isGreaterThan(100);
        var tube = EquipmentFixtures.aTube();
        var spot = new FocalSpotPart("large", number("1.2"), List.of(new RatingPart(number("100"), number("80"))));
        var room = aHandbookRoom()
                .withTube(new TubePart(tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, List.of(spot), null))
                .withGenerator(aConsole("16.1", "161"))
                .room();
        var set = manual(found(room, aHandbookRow().withMAs("16.1"), aQuery().of("KNEE", "ap")));
        assertThat(set.time()).hasToString("100 ms");
    }

    @Test
    void a_current_that_would_end_too_early_is_not_taken() {
        var quick = EquipmentFixtures.aGenerator();
        var generator =
                new GeneratorPart(quick.waveform(), quick.kV(), quick.mAs(), quick.mA(), number("4"), quick.aec());
        var room = aHandbookRoom().withGenerator(generator).room();
        var set = manual(found(room, aHandbookRow().withMAs("1"), aQuery().of("KNEE", "ap")));
        assertThat(set.mA()).hasToString("250 mA"); // 1 mAs: 320 mA take 3.125 ms, 250 mA 4 ms
        assertThat(set.time()).hasToString("4 ms");
    }

    @Test
    void too_much_and_too_little_for_the_generator_is_refused_with_its_bound() {
        var much = refused(ROOM, aHandbookRow().withMAs("560"), aQuery().of("KNEE", "ap"));
        assertThat(much.reasons()).containsExactly("560 mAs is over the generator's largest, 500 mAs");
        var little = refused(ROOM, aHandbookRow().withMAs("0.44"), aQuery().of("KNEE", "ap"));
        assertThat(little.reasons()).containsExactly("0.44 mAs is under the generator's smallest, 0.5 mAs");
    }

    @Test
    void half_a_step_beyond_the_last_station_is_still_rounded() {
        // beyond 500 by half of the step from 400: 500 x sqrt(1.25) = 559; under 0.5 by half of that to 0.63: 0.4454
        assertThat(mAsSet(ROOM, "559")).isEqualTo("500 mAs");
        assertThat(mAsSet(ROOM, "0.446")).isEqualTo("0.5 mAs");
    }

    @Test
    void what_no_current_makes_is_refused_with_rating_and_shortest_time() {
        var refusal = refused(
                ROOM, aHandbookRow().withKV("150").withMAs("250").with(FocalSpotName.SMALL), aQuery().of("KNEE", "ap"));
        assertThat(refusal.reasons())
                .containsExactly("no mA station makes 250 mAs at 150 kV on the small focal spot "
                        + "within its rating (2000 ms at the longest) in 1 ms or more");
    }

    @Test
    void a_time_over_the_rows_longest_is_refused_with_both() {
        var row = aHandbookRow()
                .withKV("100")
                .withMAs("40")
                .with(FocalSpotName.SMALL)
                .withLongestTime("159");
        var refusal = refused(ROOM, row, aQuery().of("KNEE", "ap"));
        assertThat(refusal.reasons())
                .containsExactly(
                        "40 mAs at 100 kV on the small focal spot takes 160 ms at 250 mA, the row allows 159 ms");
        assertThat(manual(found(ROOM, row.withLongestTime("160"), aQuery().of("KNEE", "ap")))
                        .time())
                .hasToString("160 ms");
    }

    @Test
    void a_focal_spot_the_tube_does_not_have_is_refused() {
        var tube = EquipmentFixtures.aTube();
        var small = new TubePart(
                tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, List.of(EquipmentFixtures.aSmallSpot()), null);
        var room = aHandbookRoom().withTube(small).room();
        var refusal = refused(room, aHandbookRow(), aQuery().of("KNEE", "ap"));
        assertThat(refusal.detail()).contains("no large focal spot");
        assertThat(refusal.kind()).isEqualTo(Refusal.Kind.NOT_ACHIEVABLE);
    }
}
