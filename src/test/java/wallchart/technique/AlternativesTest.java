package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.equipment.EquipmentFixtures.numbers;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.manual;
import static wallchart.technique.TechniqueFixtures.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Room;

/** What is offered where nothing on the console will do; each offer is then asked for. */
class AlternativesTest {

    private static final Room ROOM = aHandbookRoom().room();

    @Test
    void the_large_focal_spot_is_offered_and_does() {
        var row = aHandbookRow()
                .withKV("100")
                .withMAs("200")
                .with(FocalSpotName.SMALL)
                .withLongestTime("500");
        var offer = offer(ROOM, row, "large focal spot");
        assertThat(offer).isEqualTo("large focal spot: " + words(ROOM, row.with(FocalSpotName.LARGE), aQuery()));
    }

    @Test
    void a_higher_kv_with_half_the_mas_is_offered_and_does() {
        var row = aHandbookRow().withKV("80").withMAs("560");
        var offer = offer(ROOM, row, "15 % more kV with half mAs");
        assertThat(offer).endsWith(words(ROOM, row.withKV("92").withMAs("280"), aQuery()));
    }

    @Test
    void a_lower_kv_with_double_the_mas_is_offered_where_it_is_too_little() {
        var row = aHandbookRow().withKV("69").withMAs("0.4");
        var offer = offer(ROOM, row, "15 % less kV (divided by 1.15) with double mAs");
        assertThat(offer).endsWith(words(ROOM, row.withKV("60").withMAs("0.8"), aQuery()));
        assertThat(refused(ROOM, row.withKV("69").withMAs("0.4"), aQuery().of("KNEE", "ap"))
                        .alternatives())
                .noneMatch(text -> text.contains("more kV"));
    }

    @Test
    void the_rows_own_grid_and_distance_are_offered_where_others_were_asked_for() {
        // 300 mAs at 100 cm is 675 mAs at 150 cm, over the largest station
        var row = aHandbookRow().withMAs("300");
        assertThat(refused(ROOM, row, aQuery().of("KNEE", "ap").atSid("150"))
                        .alternatives()
                        .get(0))
                .isEqualTo("grid none and SID 100 cm as in the row: " + words(ROOM, row, aQuery()));
    }

    @Test
    void a_shorter_distance_is_offered_where_it_is_too_much_and_does() {
        var row = aHandbookRow().withMAs("600");
        assertThat(offer(ROOM, row, "SID 95 cm")).isEqualTo("SID 95 cm: " + words(ROOM, row, aQuery().atSid("95")));
    }

    @Test
    void a_longer_distance_is_offered_where_it_is_too_little_and_does() {
        var row = aHandbookRow().withMAs("0.4");
        assertThat(offer(ROOM, row, "SID 110 cm")).isEqualTo("SID 110 cm: " + words(ROOM, row, aQuery().atSid("110")));
    }

    @Test
    void where_every_exposure_would_be_too_short_more_mas_is_offered_and_not_less() {
        // 1 mAs at 500 mA takes 2 ms, the generator needs 4 ms: that is too little, not too much
        var part = aConsole("1 1.25 1.6 2 2.5", "500");
        var slow = new GeneratorPart(part.waveform(), part.kV(), part.mAs(), part.mA(), number("4"), null);
        var room = aHandbookRoom().withGenerator(slow).room();
        var row = aHandbookRow().withMAs("1.25").withKV("69");
        var refusal = refused(room, row, aQuery().of("KNEE", "ap"));
        assertThat(refusal.reasons()).singleElement().asString().contains("in 4 ms or more");
        assertThat(refusal.alternatives())
                .containsExactly(
                        "15 % less kV (divided by 1.15) with double mAs: "
                                + words(room, row.copy().withKV("60").withMAs("2.5"), aQuery()),
                        "SID 120 cm: " + words(room, row, aQuery().atSid("120")));
    }

    @Test
    void a_stop_is_offered_where_the_support_has_stops() {
        var support = new SupportPart(
                "tabletop",
                number("0"),
                new DistancesPart(null, null, numbers("60 101.6 182.88")),
                List.of("none"),
                List.of("dr1"),
                null);
        var room = EquipmentFixtures.aRoom().withSupports(List.of(support)).room();
        var row = aHandbookRow().withSid("182.88").withMAs("600");
        assertThat(offer(room, row, "SID")).isEqualTo("SID 101.6 cm: " + words(room, row, aQuery().atSid("101.6")));
    }

    @Test
    void a_distance_outside_the_focal_range_or_near_the_skin_is_not_offered() {
        var focused = EquipmentFixtures.aGrid("g10", "100", "98", "130");
        var room = aHandbookRoom()
                .withGrids(List.of(focused))
                .withSupports(gridOnly())
                .room();
        assertThat(refused(room, aHandbookRow().withGrid("g10").withMAs("600"), aQuery().of("KNEE", "ap"))
                        .alternatives())
                .noneMatch(text -> text.startsWith("SID"));
        // 150 x as much would fit at some 15 cm, where the skin is nearer than 45 cm
        assertThat(refused(ROOM, aHandbookRow().withMAs("2000").withSid("60"), aQuery().of("KNEE", "ap"))
                        .alternatives())
                .noneMatch(text -> text.startsWith("SID"));
    }

    private static List<SupportPart> gridOnly() {
        return List.of(new SupportPart(
                "tabletop",
                number("0"),
                new DistancesPart(number("10"), number("400"), null),
                List.of("g10"),
                List.of("dr1"),
                null));
    }

    @Test
    void a_kv_outside_the_rows_window_is_not_offered() {
        var row = aHandbookRow().withKV("80").withMAs("560").withKVWindow("75", "85");
        assertThat(refused(ROOM, row, aQuery().of("KNEE", "ap")).alternatives())
                .noneMatch(text -> text.contains("kV with"));
    }

    @Test
    void where_nothing_would_do_it_says_so() {
        var row = aHandbookRow()
                .withKV("80")
                .withMAs("2000")
                .withKVWindow("75", "85")
                .withSid("60");
        var refusal = refused(ROOM, row, aQuery().of("KNEE", "ap"));
        assertThat(refusal.alternatives()).containsExactly("another room or technique, by judgement and local rules");
        assertThat(refusal.detail()).startsWith("2000 mAs is over the generator's largest, 500 mAs. What would do: ");
    }

    private static String offer(Room room, RowBuilder row, String start) {
        return refused(room, row, aQuery().of("KNEE", "ap")).alternatives().stream()
                .filter(text -> text.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no offer of " + start));
    }

    /** The setting that an offer promises, asked for outright. */
    private static String words(Room room, RowBuilder row, QueryBuilder query) {
        var set = manual(found(room, row, query.of("KNEE", "ap")));
        return set.kV() + ", " + set.mAs() + " (" + set.mA() + ", " + set.time() + ")";
    }
}
