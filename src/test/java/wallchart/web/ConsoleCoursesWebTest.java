package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.EquipmentFixtures;
import wallchart.people.Role;
import wallchart.store.Actor;

/** What the console is set to along the thickness, and what the checks say of a version, asked by people. */
class ConsoleCoursesWebTest {

    private static final String VERSION = "/api/v1/charts/r1/versions/2";
    private static final String SPINE =
            VERSION + "/courses?bodyPart=LSPINE&projection=ap&patientGroup=adult&support=table-bucky";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse get(String address) {
        return SERVICE.person(Role.RADIOGRAPHER).get(address).then();
    }

    @Test
    void a_manual_row_has_settings_and_costs_and_an_aec_row_its_back_up() {
        get(SPINE)
                .statusCode(200)
                .header("Cache-Control", "private, no-cache")
                .body("rows", hasSize(2))
                .body("rows[0].row", equalTo("LSPINE/ap/adult/table-bucky/18-24"))
                .body("rows[0].aec", is(false))
                .body("rows[0].points", hasSize(60))
                .body("rows[0].points.mA", everyItem(notNullValue()))
                .body("rows[1].aec", is(true))
                .body("rows[1].points.mA", everyItem(nullValue()))
                .body("rows[1].points.dose.upperBound", everyItem(is(true)))
                .body("rows.refused", everyItem(empty()));
    }

    /** The site's own level, as the service was given it. */
    @Test
    void the_reference_level_stands_beside_with_quantity_and_source_and_each_cost_as_a_share_of_it() {
        var answer = get(SPINE)
                .body("referenceLevel.value", equalTo(10))
                .body("referenceLevel.unit", equalTo("mGy"))
                .body("referenceLevel.inBase", is(10_000))
                .body("referenceLevel.quantityId", equalTo("entrance-surface-air-kerma"))
                .body("referenceLevel.source", containsString("115"))
                .body("kermaAreaProductLevel", nullValue())
                .extract();
        double kerma = answer.jsonPath().getDouble("rows[0].points[30].dose.entranceAirKermaMicroGy");
        double percent = answer.jsonPath().getDouble("rows[0].points[30].dose.referenceLevelPercent");
        assertThat(percent).isCloseTo(100 * kerma / 10_000, org.assertj.core.data.Offset.offset(0.001));
    }

    @Test
    void each_point_is_what_the_room_is_told() {
        var course = get(SPINE).extract().jsonPath();
        var room = SERVICE.person(Role.LEAD)
                .get("/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&support=table-bucky&thicknessCm=22.4")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        var point = "rows[0].points.find { it.thicknessCm == 22.4f }.";
        assertThat(course.getString(point + "kV")).isEqualTo(room.getString("set.kV"));
        assertThat(course.getString(point + "mAs")).isEqualTo(room.getString("set.mAs"));
        assertThat(course.getString(point + "timeMs")).isEqualTo(room.getString("set.timeMs"));
        assertThat(course.getString(point + "exact.mAs")).isEqualTo(room.getString("exact.mAs"));
        assertThat(course.getString(point + "dose.entranceAirKermaMicroGy"))
                .isEqualTo(room.getString("dose.entranceAirKermaMicroGy"));
    }

    @Test
    void the_physics_says_which_mas_would_keep_the_receptor_exposure_even() {
        var at = "examinations[0].rows[0].curve[0].";
        var curve = get(VERSION + "/physics?bodyPart=LSPINE").extract().jsonPath();
        double decibels = curve.getDouble(at + "receptorExposureDb");
        double even = curve.getDouble(at + "evenMAs");
        double set = curve.getDouble(at + "mAs");
        // dB = 10 log10 of a ratio, by definition; the answer rounds it to hundredths
        assertThat(10 * Math.log10(set / even)).isCloseTo(decibels, org.assertj.core.data.Offset.offset(0.006));
        assertThat(curve.getDouble("examinations[0].rows[0].curve[7].evenMAs"))
                .isEqualTo(curve.getDouble("examinations[0].rows[0].curve[7].mAs"));
    }

    @Test
    void what_the_caller_already_has_is_not_sent_again() {
        var tag = get(SPINE).extract().header("ETag");
        SERVICE.person(Role.LEAD).header("If-None-Match", tag).get(SPINE).then().statusCode(304);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?bodyPart=LSPINE", "?bodyPart=LSPINE&projection=ap&patientGroup=adult"})
    void an_examination_is_named_whole(String query) {
        get(VERSION + "/courses" + query).statusCode(400).body("code", equalTo("invalid-parameter"));
    }

    @Test
    void an_examination_that_the_version_does_not_have() {
        get(SPINE.replace("LSPINE", "SKULL")).statusCode(404).body("code", equalTo("unknown-row"));
        get(SPINE.replace("versions/2", "versions/9")).statusCode(404).body("code", equalTo("unknown-version"));
    }

    /** In a service of its own, because the equipment changes. */
    @Test
    void the_checks_of_a_chart_are_made_of_a_signed_version_with_the_equipment_of_today() {
        var service = new RunningService().start();
        try {
            findings(service).body("blocking", is(false)).body("findings", empty());
            service.services()
                    .rooms()
                    .install(
                            Actor.system("test"),
                            EquipmentFixtures.aRoom().withoutAec().document());
            findings(service)
                    .body("blocking", is(true))
                    .body("findings.row", hasItem("LSPINE/ap/adult/table-bucky/24-30"));
        } finally {
            service.stop();
        }
        get("/api/v1/charts/r1/versions/9/findings").statusCode(404).body("code", equalTo("unknown-version"));
    }

    private static ValidatableResponse findings(RunningService service) {
        return service.person(Role.RADIOGRAPHER)
                .get(VERSION + "/findings")
                .then()
                .statusCode(200);
    }

    @Test
    void a_version_ends_when_one_with_a_higher_number_comes_into_force() {
        get("/api/v1/charts/r1/versions")
                .body("versions[1].inForceTo", equalTo("2026-02-02T07:00:00Z"))
                .body("versions[0].inForceTo", nullValue());
    }
}
