package wallchart.web;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;
import wallchart.web.problem.Problem;

/** Every "no" of the main job names its reason, its limit and what would do. */
class TechniqueRefusalsWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse refused(int status, String code, String query) {
        return problem(
                status,
                code,
                SERVICE.workstation("r1")
                        .get("/api/v1/rooms/r1/technique?" + query)
                        .then());
    }

    private static ValidatableResponse problem(int status, String code, ValidatableResponse response) {
        return response.statusCode(status)
                .contentType(Problem.MEDIA_TYPE)
                .header("Cache-Control", "no-store")
                .body("type", equalTo("/problems/" + code))
                .body("code", equalTo(code))
                .body("status", equalTo(status))
                .body("requestId", equalTo(response.extract().header("X-Request-Id")));
    }

    @Test
    void a_body_part_that_is_not_on_the_chart() {
        refused(404, "unknown-body-part", "bodyPart=SKULL&projection=ap&thicknessCm=20")
                .body("bodyParts", contains("KNEE", "LSPINE"))
                .body("instance", equalTo("/api/v1/rooms/r1/technique"));
    }

    @Test
    void a_projection_that_is_not_on_the_chart() {
        refused(404, "unknown-projection", "bodyPart=LSPINE&projection=lateral&thicknessCm=20")
                .body("projections", contains("ap"));
    }

    @Test
    void a_patient_group_that_has_no_rows() {
        refused(404, "unknown-patient-group", "bodyPart=LSPINE&projection=ap&thicknessCm=20&patientGroup=child-1-4")
                .body("patientGroups", contains("adult"));
    }

    @Test
    void an_examination_at_two_supports_needs_one_of_them() {
        refused(422, "support-required", "bodyPart=KNEE&projection=ap&thicknessCm=12")
                .body("supports", contains("tabletop", "table-bucky"));
        refused(422, "support-required", "bodyPart=LSPINE&projection=ap&thicknessCm=20&support=mobile")
                .body("supports", contains("table-bucky"));
    }

    @Test
    void a_thickness_beyond_every_band_is_told_the_nearest() {
        refused(422, "thickness-outside-chart", "bodyPart=KNEE&projection=ap&thicknessCm=13&support=tabletop")
                .body("nearestBandsCm", equalTo(List.of(List.of(10, 13))));
        refused(422, "thickness-outside-chart", "bodyPart=LSPINE&projection=ap&thicknessCm=30")
                .body("nearestBandsCm", equalTo(List.of(List.of(24, 30))))
                .body("supports", nullValue())
                .body("detail", containsString("30 cm"));
    }

    @Test
    void a_grid_that_cannot_be_used_at_the_support() {
        refused(422, "unknown-grid", "bodyPart=LSPINE&projection=ap&thicknessCm=20&grid=g8")
                .body("grids", contains("g10", "none"));
    }

    @Test
    void an_adjustment_that_the_version_does_not_have() {
        refused(422, "unknown-adjustment", "bodyPart=LSPINE&projection=ap&thicknessCm=20&adjust=wet-plaster")
                .body("adjustments", contains("plaster", "lytic"));
    }

    @Test
    void what_the_room_cannot_do_comes_with_what_would_do() {
        refused(422, "not-achievable", "bodyPart=LSPINE&projection=ap&thicknessCm=20&sidCm=180")
                .body("reasons", hasSize(1))
                .body("alternatives", contains("SID 125 cm"))
                .body("alternativeQuestions[0].text", equalTo("SID 125 cm"))
                .body("alternativeQuestions[0].sidCm", equalTo(125))
                .body("alternativeQuestions[0].grid", equalTo("g10"))
                .body("detail", allOf(containsString("180 cm"), containsString("125 cm")));
    }

    @Test
    void a_room_that_is_not_known() {
        problem(
                404,
                "unknown-room",
                SERVICE.person(Role.RADIOGRAPHER)
                        .get("/api/v1/rooms/r9/technique")
                        .then());
    }

    @Test
    void a_room_without_a_chart() {
        var response =
                SERVICE.workstation("r2").get("/api/v1/rooms/r2/technique?bodyPart=KNEE&projection=ap&thicknessCm=12");
        problem(409, "no-chart-in-force", response.then()).body("detail", containsString("room r2"));
    }

    @Test
    void an_instant_before_the_first_version_and_before_the_first_equipment() {
        var examination = "bodyPart=LSPINE&projection=ap&thicknessCm=20&at=";
        refused(409, "no-chart-in-force", examination + "2026-01-05T06:59:59Z");
        refused(409, "no-chart-in-force", examination + "1999-01-01T00:00:00Z");
    }
}
