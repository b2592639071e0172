package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.equipment.EquipmentFixtures.numbers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.quantity.Distance;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** Grids, focal spots, outputs and distances: what they answer between their tabulated points and beyond. */
class RoomPartsTest {

    private static Grid grid(String... factors) {
        var points = Stream.of(factors)
                .map(text -> text.split(" "))
                .map(text -> new Grid.Factor(TubeVoltage.kilovolts(text[0]), number(text[1])))
                .toList();
        return new Grid("g10", BigDecimal.TEN, number("40"), Optional.empty(), Optional.empty(), points);
    }

    @ParameterizedTest(name = "at {0} kV the factor is {1}")
    @CsvSource({"40, 3.2", "70, 3.2", "80, 3.45", "90, 3.7", "105, 4.05", "120, 4.4", "150, 4.4"})
    void a_grid_factor_is_linear_between_points_and_held_at_the_ends(double kV, double factor) {
        assertThat(grid("70 3.2", "90 3.7", "120 4.4").factorAt(kV)).isCloseTo(factor, within(1e-12));
    }

    @Test
    void a_grid_with_one_factor_has_it_everywhere() {
        assertThat(grid("70 3.2").factorAt(40)).isEqualTo(3.2);
        assertThat(grid("70 3.2").factorAt(150)).isEqualTo(3.2);
    }

    @Test
    void impossible_grids_are_refused() {
        assertThatThrownBy(() -> grid("70 0.9")).hasMessageContaining("never lowers the mAs");
        assertThatThrownBy(() -> grid("90 3", "70 4")).hasMessageContaining("ascending");
        assertThatThrownBy(() ->
                        new Grid("none", BigDecimal.TEN, BigDecimal.TEN, Optional.empty(), Optional.empty(), List.of()))
                .hasMessageContaining("means no grid");
        var focus = Optional.of(Distance.centimetres(140));
        var range = Optional.of(new DistanceRange(Distance.centimetres(95), Distance.centimetres(130)));
        var factors = List.of(new Grid.Factor(TubeVoltage.kilovolts(70), BigDecimal.TEN));
        assertThatThrownBy(() -> new Grid("g10", BigDecimal.TEN, BigDecimal.TEN, focus, range, factors))
                .hasMessageContaining("140 cm lies outside its focal range 95 to 130 cm");
        assertThatThrownBy(() -> new Grid("g10", BigDecimal.TEN, BigDecimal.TEN, focus, Optional.empty(), factors))
                .hasMessageContaining("needs its focal range");
        assertThatThrownBy(() -> new Grid("g1", BigDecimal.ONE, BigDecimal.TEN, Optional.empty(), range, factors))
                .hasMessageContaining("1:1");
    }

    private static FocalSpot spot(String... ratings) {
        return new FocalSpot(
                FocalSpotName.SMALL,
                number("0.6"),
                Stream.of(ratings)
                        .map(text -> text.split(" "))
                        .map(text -> new FocalSpot.Rating(
                                ExposureTime.milliseconds(text[0]), ElectricPower.kilowatts(text[1])))
                        .toList());
    }

    @ParameterizedTest(name = "{0} ms may take {1} kW")
    @CsvSource({"0.5, 32", "100, 32", "100.001, 25", "500, 25", "2000, 15"})
    void a_time_between_two_ratings_gets_the_lower_power(String milliseconds, String kW) {
        assertThat(spot("100 32", "500 25", "2000 15").powerAllowedFor(ExposureTime.milliseconds(milliseconds)))
                .contains(ElectricPower.kilowatts(kW));
    }

    @Test
    void beyond_the_last_rating_there_is_no_power_at_all() {
        assertThat(spot("100 32", "2000 15").powerAllowedFor(ExposureTime.milliseconds("2000.001")))
                .isEmpty();
        assertThat(spot("100 32", "2000 15").longestTime()).hasToString("2000 ms");
    }

    @Test
    void a_load_just_at_the_rating_is_allowed() {
        var spot = spot("100 25.76", "500 20");
        var kV = TubeVoltage.kilovolts("64.4");
        assertThat(spot.bears(kV, TubeCurrent.milliamperes(400), ExposureTime.milliseconds(100)))
                .isTrue(); // 25.76 kW, in binary a hair over
        assertThat(spot.bears(kV, TubeCurrent.milliamperes("400.1"), ExposureTime.milliseconds(100)))
                .isFalse();
        assertThat(spot.bears(kV, TubeCurrent.milliamperes(400), ExposureTime.milliseconds(101)))
                .isFalse();
        assertThat(spot.bears(kV, TubeCurrent.milliamperes(10), ExposureTime.milliseconds(501)))
                .isFalse();
    }

    @Test
    void a_rating_that_rises_with_time_is_refused() {
        assertThatThrownBy(() -> spot("100 20", "500 25")).hasMessageContaining("rises from 20 kW to 25 kW");
        assertThatThrownBy(() -> spot("100 0")).hasMessageContaining("0 kW");
        assertThatThrownBy(() -> spot("500 25", "100 20")).hasMessageContaining("ascending");
        assertThatThrownBy(() -> new FocalSpot(
                        FocalSpotName.LARGE, number("0.05"), spot("100 32").ratings()))
                .hasMessageContaining("0.05");
    }

    private static MeasuredOutput output(String... points) {
        return new MeasuredOutput(
                LocalDate.parse("2026-01-14"),
                Filtration.aluminium("3.0"),
                number("3.1"),
                TubeVoltage.kilovolts(80),
                number("8"),
                Stream.of(points)
                        .map(text -> text.split(" "))
                        .map(text -> new MeasuredOutput.Point(TubeVoltage.kilovolts(text[0]), number(text[1])))
                        .toList());
    }

    @Test
    void an_output_passes_through_its_points_and_follows_a_power_between_and_beyond() {
        var square = output("50 25", "100 100", "120 144"); // kV squared / 100
        for (double kV : new double[] {40, 50, 75, 100, 110, 120, 150}) {
            assertThat(square.microGyPerMAs(kV)).isCloseTo(kV * kV / 100, within(1e-9));
        }
        assertThat(square.covers(50)).isTrue();
        assertThat(square.covers(49.9)).isFalse();
        assertThat(square.covers(120)).isTrue();
        assertThat(square.covers(120.1)).isFalse();
    }

    @Test
    void each_interval_has_its_own_power() {
        var bent = output("50 10", "100 20", "200 80"); // exponent 1, then 2
        assertThat(bent.microGyPerMAs(75)).isCloseTo(15, within(1e-9));
        assertThat(bent.microGyPerMAs(150)).isCloseTo(45, within(1e-9));
    }

    @Test
    void an_impossible_output_is_refused() {
        assertThatThrownBy(() -> output("80 50")).hasMessageContaining("at least");
        assertThatThrownBy(() -> output("80 50", "70 60", "90 80")).hasMessageContaining("ascending");
        assertThatThrownBy(() -> output("60 0", "80 50", "90 60")).hasMessageContaining("over 0");
    }

    private static AllowedDistances stops(String digits) {
        return new AllowedDistances.Stops(
                numbers(digits).stream().map(Distance::new).toList());
    }

    @Test
    void a_range_allows_both_its_ends_and_all_between() {
        var range = new AllowedDistances.Within(new DistanceRange(Distance.centimetres(90), Distance.centimetres(125)));
        assertThat(range.allows(Distance.centimetres(90))).isTrue();
        assertThat(range.allows(Distance.centimetres("125.0000"))).isTrue();
        assertThat(range.allows(Distance.centimetres("125.0001"))).isFalse();
        assertThat(range.nearest(Distance.centimetres(80))).hasToString("90 cm");
        assertThat(range.nearest(Distance.centimetres(180))).hasToString("125 cm");
        assertThat(range.nearest(Distance.centimetres("101.6"))).hasToString("101.6 cm");
        assertThat(range).hasToString("90 to 125 cm");
    }

    @Test
    void stops_allow_only_themselves_and_a_tie_goes_to_the_shorter() {
        assertThat(stops("100 110 180").allows(Distance.centimetres("110.0"))).isTrue();
        assertThat(stops("100 110 180").allows(Distance.centimetres(111))).isFalse();
        assertThat(stops("100 110 180").nearest(Distance.centimetres(105))).hasToString("100 cm");
        assertThat(stops("100 110 180").nearest(Distance.centimetres("145.1"))).hasToString("180 cm");
        assertThat(stops("100 110 180")).hasToString("100, 110, 180 cm");
    }

    @Test
    void a_room_finds_its_parts_by_name() {
        var room = aRoom().room();
        assertThat(room.findGrid("g10")).isPresent();
        assertThat(room.findGrid(Grid.NONE)).isEmpty();
        assertThat(room.findReceptor("cr1")).isPresent();
        assertThat(room.findReceptor("cr9")).isEmpty();
        assertThat(room.findSupport(SupportKind.WALL_BUCKY)).isPresent();
        assertThat(room.findSupport(SupportKind.MOBILE)).isEmpty();
    }
}
