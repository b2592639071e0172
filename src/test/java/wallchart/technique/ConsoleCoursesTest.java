package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.technique.TechniqueFixtures.RULES;
import static wallchart.technique.TechniqueFixtures.TODAY;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.answer;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartBuilder;
import wallchart.chart.ExaminationKey;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Decimals;

/** What a console makes of a chart along the thickness. */
class ConsoleCoursesTest {

    private static final ExaminationKey KNEE = new ExaminationKey("KNEE", "ap", "adult", SupportKind.TABLETOP);

    private static List<ConsoleCourse> courses(Room room, ChartBuilder chart) {
        return new ConsoleCourses(RULES).of(room, chart.version(), KNEE, TODAY);
    }

    private static String mAs(ConsoleCourse.Point point) {
        return point.answer()
                .either(found -> Decimals.plain(found.set().mAs().milliampereSeconds()), refused -> refused.kind()
                        .name());
    }

    private static List<String> runs(ConsoleCourse course) {
        var found = new java.util.ArrayList<String>();
        String last = "";
        for (var point : course.points()) {
            if (!mAs(point).equals(last)) {
                last = mAs(point);
                found.add(point.thickness().centimetres().toPlainString() + ": " + last);
            }
        }
        return found;
    }

    private static RowBuilder aDoublingRow() {
        return aHandbookRow().withMethod("mas-per-cm", "5");
    }

    /**
     * mAs double every 5 cm from 10 mAs at 10 cm (common practice, no source). Stations of R10 (ISO 3) 10, 12.5, 16, 20: a step lies
     * where the rule reaches the geometric mean of two of them, sqrt(10 x 12.5) = 11.180 mAs at 10.80 cm, sqrt(12.5 x 16) = 14.142
     * mAs at 12.5 cm, sqrt(16 x 20) = 17.889 mAs at 14.19 cm.
     */
    @Test
    void the_steps_of_the_stations_lie_where_the_rule_passes_between_two_of_them() {
        var room = aHandbookRoom().withGenerator(aConsole("10 12.5 16 20", "100 200"));
        var course = courses(room.room(), aChart().with(aDoublingRow().withBand(10, 15)));
        assertThat(runs(course.get(0))).hasSize(4);
        assertThat(runs(course.get(0))).element(0).isEqualTo("10.00: 10");
        assertThat(runs(course.get(0))).element(1).isEqualTo("10.90: 12.5");
        assertThat(runs(course.get(0)).get(2)).isIn("12.50: 16", "12.60: 16"); // on the very middle, a tie
        assertThat(runs(course.get(0))).element(3).isEqualTo("14.20: 20");
    }

    @Test
    void every_point_is_the_answer_that_the_room_would_get() {
        var room = aHandbookRoom().room();
        var chart = aChart().with(aDoublingRow().withBand(8, 12))
                .with(aDoublingRow().withBand(12, 16).withReferenceThickness("14"));
        for (var course : courses(room, chart)) {
            for (var point : course.points()) {
                var thickness = Decimals.plain(point.thickness().centimetres());
                assertThat(point.answer())
                        .isEqualTo(answer(room, chart, aQuery().of("KNEE", "ap").ofThickness(thickness)));
            }
        }
    }

    @Test
    void a_band_is_asked_from_its_lower_end_up_to_and_not_including_its_upper_one_with_the_reference_thickness() {
        var points = courses(
                        aHandbookRoom().room(),
                        aChart().with(aHandbookRow().withBand(10, 11).withReferenceThickness("10.55")))
                .get(0)
                .points();
        assertThat(points.stream()
                        .map(point -> point.thickness().centimetres().toPlainString())
                        .toList())
                .containsExactly(
                        "10.00", "10.10", "10.20", "10.30", "10.40", "10.50", "10.55", "10.60", "10.70", "10.80",
                        "10.90");
    }

    @Test
    void nobody_asks_for_nothing_at_all_or_for_more_than_60_cm() {
        var points = courses(
                        aHandbookRoom().room(), aChart().with(aHandbookRow().withBand(0, 80)))
                .get(0)
                .points();
        assertThat(points).hasSize(600);
        assertThat(points.get(0).thickness().inCentimetres()).isEqualTo(0.1);
        assertThat(points.get(599).thickness().inCentimetres()).isEqualTo(60);
    }

    @Test
    void bands_come_by_ascending_thickness_and_other_examinations_not_at_all() {
        var chart = aChart().with(aDoublingRow().withBand(12, 16).withReferenceThickness("14"))
                .with(aDoublingRow().withBand(8, 12))
                .with(aDoublingRow().of("ANKLE", "ap"));
        assertThat(courses(aHandbookRoom().room(), chart))
                .extracting(course -> course.row().key().band().toString())
                .containsExactly("8-12", "12-16");
    }

    @Test
    void where_the_console_ends_the_refusal_stands_in_the_course() {
        var room = aHandbookRoom().withGenerator(aConsole("5 10 20", "100 200"));
        var course = courses(room.room(), aChart().with(aDoublingRow().withBand(8, 20)));
        assertThat(runs(course.get(0)).get(runs(course.get(0)).size() - 1)).endsWith("NOT_ACHIEVABLE");
    }
}
