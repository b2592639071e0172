package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.RULES;
import static wallchart.technique.TechniqueFixtures.TODAY;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.technique.ReferenceLevel.Quantity;

/** What an answer warns of, and that it does not warn where there is nothing. */
class CautionsTest {

    private static final Room ROOM = EquipmentFixtures.aRoom().room();
    private static final Room HANDBOOK = aHandbookRoom().room();

    @Test
    void every_answer_says_that_it_replaces_no_judgement() {
        assertThat(found(ROOM, aRow(), aQuery()).cautions())
                .singleElement()
                .asString()
                .contains(
                        "never replaces",
                        "identify the patient",
                        "justify the exposure",
                        "pregnancy",
                        "low as reasonably achievable",
                        "local rules",
                        "medical physicist",
                        "room r1 only");
    }

    @Test
    void a_distance_outside_the_focal_range_names_grid_and_range() {
        // grid g10 of the fixtures: 95 to 130 cm
        assertThat(found(ROOM, aRow(), aQuery().atSid("94")).cautions().get(0))
                .isEqualTo(
                        "SID 94 cm is outside the focal range of grid g10, 95 to 130 cm: expect cut-off at the edges");
        assertThat(found(ROOM, aRow(), aQuery().atSid("95")).cautions()).hasSize(1);
        assertThat(found(ROOM, aRow(), aQuery().atSid("94").withGrid("none")).cautions())
                .hasSize(1);
    }

    @Test
    void adjustments_asked_together_are_named_with_what_they_come_to() {
        var chart = aChart().with(aRow())
                .with(timesMAs("dry", "2"))
                .with(timesMAs("wet", "3"))
                .with(addingKV("cast", "6"))
                .with(addingKV("thin", "-6"));
        assertThat(found(ROOM, chart, aQuery().with("dry")).cautions()).hasSize(1);
        assertThat(found(ROOM, chart, aQuery().with("dry", "wet")).cautions().get(0))
                .isEqualTo(
                        "Times 2 and Times 3 add up, mAs x 6 in all: each was defined alone; check that they do not stand "
                                + "for the same thing");
        assertThat(found(ROOM, chart, aQuery().with("dry", "cast")).cautions().get(0))
                .startsWith("Times 2 and Adds 6 kV add up, mAs x 2 and +6 kV in all:");
        assertThat(found(ROOM, chart, aQuery().with("cast", "thin")).cautions().get(0))
                .startsWith("Adds 6 kV and Adds -6 kV add up, nothing in all:");
    }

    @Test
    void the_standing_caution_comes_last() {
        assertThat(found(ROOM, aRow(), aQuery().atSid("94")).cautions())
                .hasSize(2)
                .last()
                .asString()
                .startsWith("Supports");
    }

    @Test
    void a_skin_nearer_than_45_cm_is_warned_of() {
        // 45 cm: least focus-skin distance of fixed radiographic equipment, from memory
        var near = found(HANDBOOK, aHandbookRow(), aQuery().of("KNEE", "ap").atSid("65.9"));
        assertThat(near.cautions().get(0)).startsWith("the skin is only 44.9 cm from the focal spot");
        assertThat(found(HANDBOOK, aHandbookRow(), aQuery().of("KNEE", "ap").atSid("66"))
                        .cautions())
                .hasSize(1);
    }

    @Test
    void a_version_past_its_review_still_answers_and_says_so() {
        var chart = aChart().with(aRow()).version();
        assertThat(cautionsOn(chart.head().reviewDue().plusDays(1)).get(0))
                .isEqualTo("version 1 was due for review on 2027-01-05: it still answers; tell the lead radiographer");
        assertThat(cautionsOn(chart.head().reviewDue())).hasSize(1);
    }

    private static List<String> cautionsOn(LocalDate day) {
        var answer = RULES.answer(ROOM, aChart().with(aRow()).version(), aQuery().query(), day);
        return ((Answer.Found) answer).technique().cautions();
    }

    @Test
    void rounding_by_more_than_a_decibel_is_warned_of() {
        // stations 10 and 20: 12.6 goes to 10, -1.00 dB, one R10 step; 13 goes to 10, -1.14 dB; 15 goes to 20, +1.25 dB
        var coarse = aHandbookRoom().withGenerator(aConsole("10 20", "100")).room();
        assertThat(roundingCaution(coarse, "13"))
                .isEqualTo("the nearest mAs station moves the receptor exposure by -1.14 dB");
        assertThat(roundingCaution(coarse, "15")).contains("+1.25 dB");
        assertThat(found(coarse, aHandbookRow().withMAs("12.5"), aQuery().of("KNEE", "ap"))
                        .cautions())
                .hasSize(1);
    }

    private static String roundingCaution(Room coarse, String mAs) {
        return found(coarse, aHandbookRow().withMAs(mAs), aQuery().of("KNEE", "ap"))
                .cautions()
                .get(0);
    }

    @Test
    void a_kv_limit_that_held_is_warned_of() {
        var row = aHandbookRow().withMethod("kv-per-cm", "2").withKVWindow("50", "65");
        assertThat(found(HANDBOOK, row, aQuery().of("KNEE", "ap").ofThickness("13"))
                        .cautions()
                        .get(0))
                .isEqualTo("66 kV was wanted, 65 kV is the limit: the mAs makes up for it, contrast and dose differ");
    }

    @Test
    void an_estimate_over_the_reference_level_by_more_than_its_uncertainty_is_warned_of() {
        // the level is set from the estimate itself, whose expanded uncertainty u is in percent: level = estimate x (1
        // - u/100)
        var dose = found(HANDBOOK, aHandbookRow(), kneeQuery()).dose().orElseThrow();
        for (var quantity : List.of(Quantity.ENTRANCE_SURFACE_AIR_KERMA, Quantity.INCIDENT_AIR_KERMA)) {
            double edge = dose.inBase(quantity) / 1000 * (1 - dose.uncertaintyPercent() / 100.0);
            assertThat(cautionsAgainst(aHandbookRow(), quantity, edge * 1.001)).hasSize(1);
            assertThat(cautionsAgainst(aHandbookRow(), quantity, edge * 0.999))
                    .hasSize(2)
                    .first()
                    .asString()
                    .contains("check thickness and adjustments", "not a limit for one patient");
        }
    }

    @Test
    void the_upper_bound_of_an_aec_exposure_is_not_held_against_the_reference_level() {
        var row = aRow().withAec(0, "100", Chamber.CENTRE);
        var level = level(row.row().key().examination().bodyPart(), Quantity.INCIDENT_AIR_KERMA, 0.001);
        var answer = new TechniqueRules(PHYSICS, List.of(level))
                .answer(ROOM, aChart().with(row).version(), aQuery().query(), TODAY);
        assertThat(((Answer.Found) answer).technique().dose().orElseThrow().referenceLevel())
                .isPresent();
        assertThat(((Answer.Found) answer).technique().cautions()).noneMatch(text -> text.contains("reference level"));
    }

    @Test
    void an_exposure_over_a_second_is_warned_of() {
        // one mA station, 100 mA: 125 mAs take 1250 ms, 100 mAs 1000 ms
        var room = aHandbookRoom()
                .withGenerator(TechniqueFixtures.aConsole("100 125", "100"))
                .room();
        assertThat(found(room, aHandbookRow().withMAs("125"), kneeQuery()).cautions())
                .hasSize(2)
                .first()
                .isEqualTo("the exposure takes 1250 ms: expect movement; immobilise, or choose a shorter SID");
        assertThat(found(room, aHandbookRow().withMAs("100"), kneeQuery()).cautions())
                .hasSize(1);
    }

    private static List<String> cautionsAgainst(RowBuilder row, Quantity quantity, double milliGy) {
        var rules = new TechniqueRules(PHYSICS, List.of(level("KNEE", quantity, milliGy)));
        var answer =
                rules.answer(HANDBOOK, aChart().with(row).version(), kneeQuery().query(), TODAY);
        return ((Answer.Found) answer).technique().cautions();
    }

    private static ReferenceLevel level(String bodyPart, Quantity quantity, double milliGy) {
        return new ReferenceLevel(
                bodyPart,
                "ap",
                "adult",
                quantity,
                BigDecimal.valueOf(milliGy),
                LevelUnit.MILLIGRAY,
                2026,
                "made for a test");
    }

    private static QueryBuilder kneeQuery() {
        return aQuery().of("KNEE", "ap");
    }
}
