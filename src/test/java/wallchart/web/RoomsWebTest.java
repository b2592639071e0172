package wallchart.web;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/** What a room is and what can be set in it. */
class RoomsWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @Test
    void the_site_gives_its_words_to_rooms_and_people() {
        SERVICE.workstation("r1")
                .get("/api/v1/site")
                .then()
                .statusCode(200)
                .body("name", equalTo("Test department"))
                .body("lengthUnit", equalTo("cm"))
                .body("invented", equalTo(false))
                .body("regions[0].label", equalTo("Chest"))
                .body("bodyParts.find { it.bodyPart == 'HIP' }.label", equalTo("Hip"))
                .body("projections.find { it.projection == 'ap' }.label", equalTo("AP"));
    }

    @Test
    void the_list_says_which_chart_is_in_force_where() {
        SERVICE.person(Role.PHYSICIST)
                .get("/api/v1/rooms")
                .then()
                .statusCode(200)
                .body("rooms.room", contains("r1", "r2"))
                .body("rooms[0].name", equalTo("Room 1"))
                .body("rooms[0].chart.version", equalTo(2))
                .body("rooms[1].chart", nullValue());
    }

    @Test
    void the_rooms_say_when_their_tubes_are_to_be_measured_again() {
        SERVICE.person(Role.RADIOGRAPHER)
                .get("/api/v1/rooms")
                .then()
                .body("rooms[0].outputMeasuredOn", equalTo("2026-01-14"))
                .body("rooms[0].outputDue", equalTo("2027-01-14"))
                .body("rooms[0].outputOverdue", equalTo(false))
                .body("rooms[0].reviewOverdue", equalTo(false))
                .body("rooms[1].outputMeasuredOn", nullValue())
                .body("rooms[1].outputDue", nullValue())
                .body("rooms[1].outputOverdue", equalTo(true));
    }

    /** So that a page which shows an answer learns of another version, and of other equipment. */
    @Test
    void a_room_says_which_state_of_its_equipment_answers() {
        var answered = SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(200)
                .body("equipment.digest", equalTo(answered.getString("equipment.digest")))
                .body("equipment.revision", equalTo(answered.getInt("equipment.revision")))
                .body("chart.digest", equalTo(answered.getString("chart.digest")));
    }

    @Test
    void a_room_tells_stations_limits_and_measured_output() {
        SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(200)
                .header("Cache-Control", "no-store")
                .body("chart.version", equalTo(2))
                .body("generator.waveform", equalTo("high-frequency"))
                .body("generator.kVStations", hasSize(111))
                .body("generator.kVStations[110]", equalTo(150))
                .body("generator.mAsStations[0]", equalTo(0.5f))
                .body("generator.mAsStations", hasItem(3.2f))
                .body("generator.aec.densities", contains(-2, -1, 0, 1, 2))
                .body("tube.focalSpots.name", contains("small", "large"))
                .body("tube.focalSpots[0].ratings[0].kW", equalTo(32))
                .body("tube.output.measuredOn", equalTo("2026-01-14"))
                .body("tube.output.microGyPerMAsAtOneMetre", hasSize(6))
                .body("grids.id", contains("g10", "g8"))
                .body("grids[0].focalRangeCm", contains(95, 130))
                .body("receptors[1].sizesCm", contains("18x24", "24x30"))
                .body("supports.support", contains("tabletop", "table-bucky", "wall-bucky"))
                .body("supports[0].aecChambers", empty())
                .body("supports[1].sidRangeCm", contains(90, 125))
                .body("supports[1].aecChambers", contains("left", "centre", "right"))
                .body("supports[2].sidStopsCm", contains(110, 150, 180));
    }

    @Test
    void a_room_without_aec_or_measurement_says_so() {
        SERVICE.workstation("r2")
                .get("/api/v1/rooms/r2")
                .then()
                .statusCode(200)
                .body("chart", nullValue())
                .body("generator.aec", nullValue())
                .body("tube.output", nullValue());
    }

    @Test
    void an_unknown_room_is_not_found() {
        SERVICE.person(Role.LEAD).get("/api/v1/rooms/r9").then().statusCode(404).body("code", equalTo("unknown-room"));
    }

    @Test
    void a_query_that_nobody_reads_is_refused() {
        SERVICE.workstation("r1").get("/api/v1/rooms?page=2").then().statusCode(400);
        SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1?at=2026-01-01T00:00:00Z")
                .then()
                .statusCode(400);
        SERVICE.anybody().get("/api/v1/health/live?x").then().statusCode(400);
    }

    @Test
    void head_has_the_headers_of_get_and_no_body() {
        SERVICE.workstation("r1")
                .head("/api/v1/rooms/r1")
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body(equalTo(""));
    }
}
