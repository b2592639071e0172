package wallchart.web;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The main job: what to set for this patient's thickness. */
class TechniqueWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse ask(String query) {
        return SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1/technique?" + query)
                .then()
                .statusCode(200);
    }

    @Test
    void a_row_asked_at_its_reference_thickness_answers_as_it_was_signed() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21")
                .contentType("application/json")
                .body("room", equalTo("r1"))
                .body("chart.version", equalTo(2))
                .body("chart.signedBy", equalTo("Pat first-lead"))
                .body("chart.inForceFrom", equalTo(Department.SECOND_VERSION_FROM))
                .body("chart.reviewDue", equalTo("2027-02-02"))
                .body("chart.source", equalTo("live"))
                .body("row.key", equalTo("LSPINE/ap/adult/table-bucky/18-24"))
                .body("row.bandCm", contains(18, 24))
                .body("row.aec", nullValue())
                .body("exact.kV", equalTo(75))
                .body("exact.mAs", equalTo(20))
                .body("set.kV", equalTo(75))
                .body("set.mAs", equalTo(20))
                .body("set.focalSpot", equalTo("large"))
                .body("set.grid", equalTo("g10"))
                .body("set.sidCm", equalTo(110))
                .body("roundingDeviation", equalTo(0))
                .body("steps.rule", hasItem("row"))
                .body("cautions", hasItem(containsString("Holds for room r1 only")));
    }

    /** 2 kV per cm over 1.5 cm: +3 kV; common practice, no source. */
    @Test
    void a_thicker_part_gets_more_kilovolts() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=22.5")
                .body("exact.kV", equalTo(78))
                .body("exact.mAs", equalTo(20))
                .body("asked.thicknessCm", equalTo(22.5f))
                .body("steps.rule", hasItem("thickness"));
    }

    /** 20 mAs at 110 cm asked at 100 cm: 20 x (100/110)^2 = 16.5289, to six digits. */
    @Test
    void another_distance_changes_the_mAs_by_the_square() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21&sidCm=100")
                .body("asked.sidCm", equalTo(100))
                .body("exact.mAs", equalTo(16.5289f))
                .body("set.sidCm", equalTo(100))
                .body("set.mAs", equalTo(16));
    }

    /** 40 in are 101.6 cm exactly: 20 x (101.6/110)^2 = 17.0621. */
    @Test
    void the_distance_may_be_asked_in_inches() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21&sidIn=40")
                .body("asked.sidCm", equalTo(101.6f))
                .body("exact.mAs", equalTo(17.0621f));
    }

    /** g10 at 75 kV: between 3.2 at 70 and 3.7 at 90 kV, so 3.325; 20 / 3.325 = 6.01504. */
    @Test
    void without_the_grid_the_mAs_falls_by_its_factor() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21&grid=none")
                .body("asked.grid", equalTo("none"))
                .body("set.grid", equalTo("none"))
                .body("exact.mAs", equalTo(6.01504f));
    }

    @Test
    void adjustments_may_be_asked_together() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21&adjust=plaster&adjust=lytic")
                .body("asked.adjustments", contains("plaster", "lytic"))
                .body("exact.kV", equalTo(81))
                .body("exact.mAs", equalTo(15));
    }

    @Test
    void an_aec_row_answers_with_chambers_density_and_back_up() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=27")
                .body("row.mAs", nullValue())
                .body("row.aec.backupMAs", equalTo(125))
                .body("set.aec.chambers", contains("left", "right"))
                .body("set.aec.density", equalTo(0))
                .body("set.aec.backupMAs", equalTo(125))
                .body("set", not(hasKey("mAs")))
                .body("dose.upperBound", equalTo(true));
    }

    @Test
    void the_dose_stands_beside_the_sites_reference_level() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21")
                .body("dose.incidentAirKermaMicroGy", notNullValue())
                .body("dose.forMAs", equalTo(20))
                .body("dose.upperBound", equalTo(false))
                .body("dose.focusSkinDistanceCm", equalTo(83))
                .body("dose.outputSource", containsString("2026-01-14"))
                .body("dose.referenceLevel.milliGy", equalTo(10))
                .body("dose.referenceLevel.source", containsString("Safety Series 115"));
        ask("bodyPart=KNEE&projection=ap&thicknessCm=12&support=tabletop").body("dose.referenceLevel", nullValue());
    }

    @Test
    void an_instant_of_the_past_is_answered_from_the_version_of_that_time() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21&at=2026-01-20T10:00:00%2B02:00")
                .body("chart.version", equalTo(1))
                .body("asked.at", equalTo("2026-01-20T08:00:00Z"))
                .body("set.mAs", equalTo(25));
    }

    @Test
    void an_answer_follows_the_question_the_day_and_the_version() {
        var question = "bodyPart=LSPINE&projection=ap&thicknessCm=19.5";
        ask(question).body("asked.at", nullValue());
        ask(question + "&adjust=lytic").body("set.mAs", not(equalTo(20)));
        SERVICE.clock().set("2027-03-01T08:00:00Z");
        ask(question).body("cautions", hasItem(containsString("due for review on 2027-02-02")));
        SERVICE.clock().set("2026-01-20T08:00:00Z");
        ask(question).body("chart.version", equalTo(1));
        SERVICE.clock().set(RunningService.NOW);
        ask(question).body("chart.version", equalTo(2));
    }

    @Test
    void the_support_says_which_row_is_meant() {
        ask("bodyPart=KNEE&projection=ap&thicknessCm=11.5&support=tabletop").body("set.mAs", equalTo(3.2f));
        ask("bodyPart=KNEE&projection=ap&thicknessCm=11.5&support=table-bucky").body("set.mAs", equalTo(10));
    }

    @Test
    void nothing_keeps_an_answer_on_the_way() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=21").header("Cache-Control", "no-store");
    }

    @Test
    void every_step_says_something() {
        ask("bodyPart=LSPINE&projection=ap&thicknessCm=22&sidCm=100&adjust=lytic")
                .body("steps", hasSize(greaterThan(6)))
                .body("steps.text", everyItem(not(equalTo(""))));
    }
}
