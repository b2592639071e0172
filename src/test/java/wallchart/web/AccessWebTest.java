package wallchart.web;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;
import wallchart.store.Actor;

/** Who may read what: nobody without credentials, a workstation its own room, people every room and every history. */
class AccessWebTest {

    private static final String QUESTION = "?bodyPart=LSPINE&projection=ap&thicknessCm=21";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/rooms",
                "/rooms/r1",
                "/rooms/r9",
                "/rooms/r1/technique" + QUESTION,
                "/charts/r1/versions",
                "/charts/r1/versions/1",
                "/charts/r1/versions/1/rows",
                "/charts/r1/compare?from=1&to=2",
                "/session"
            })
    void without_credentials_nothing_is_told(String address) {
        SERVICE.anybody()
                .get("/api/v1" + address)
                .then()
                .statusCode(401)
                .header("WWW-Authenticate", containsString("Bearer"))
                .body("code", equalTo("sign-in-required"));
        SERVICE.anybody().head("/api/v1" + address).then().statusCode(401);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bearer wrong", "Bearer ", "Bearer", "Basic bGVhZDpsZWFk", "demo-r1", "Bearer demo-r1"})
    void a_wrong_token_is_told_apart_from_none(String authorization) {
        SERVICE.anybody()
                .header("Authorization", authorization)
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(401)
                .header("WWW-Authenticate", containsString("Bearer"))
                .body("code", equalTo("wrong-token"));
    }

    @ParameterizedTest
    @CsvSource({
        "cross-site, document, 403",
        "same-site, document, 403",
        "same-origin, image, 403",
        "same-origin, iframe, 403",
        "none, script, 403",
        "none, document, 200",
        "same-origin, empty, 200",
        "same-origin, document, 200"
    })
    void a_session_acts_for_our_own_pages_and_for_what_a_person_opens(String site, String use, int status) {
        SERVICE.person(Role.LEAD)
                .header("Sec-Fetch-Site", site)
                .header("Sec-Fetch-Dest", use)
                .get("/api/v1/rooms/r1/sheet.pdf")
                .then()
                .statusCode(status);
    }

    @Test
    void programs_say_nothing_of_pages_and_pass_and_a_room_token_is_nobodys_by_accident() {
        SERVICE.person(Role.LEAD).get("/api/v1/rooms/r1").then().statusCode(200);
        SERVICE.workstation("r1")
                .header("Sec-Fetch-Site", "cross-site")
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(200);
    }

    @Test
    void a_token_of_endless_length_is_just_wrong() {
        SERVICE.anybody()
                .header("Authorization", "Bearer " + "x".repeat(4000))
                .get("/api/v1/rooms")
                .then()
                .statusCode(401);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wallchart-session=wrong", "wallchart-session=", "other=1"})
    void a_cookie_that_is_no_session_is_none(String cookie) {
        SERVICE.anybody().header("Cookie", cookie).get("/api/v1/rooms").then().statusCode(401);
    }

    @Test
    void a_workstation_sees_its_own_room_only() {
        SERVICE.workstation("r2").get("/api/v1/rooms").then().statusCode(200).body("rooms.room", contains("r2"));
        SERVICE.workstation("r1").get("/api/v1/rooms/r1").then().statusCode(200);
        SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1/technique" + QUESTION)
                .then()
                .statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/rooms/r1", "/rooms/r1/technique" + QUESTION, "/rooms/r1/technique", "/rooms/nowhere"})
    void a_workstation_is_refused_another_room_and_told_which_is_its_own(String address) {
        var asked = address.split("[/?]")[2];
        SERVICE.workstation("r2")
                .get("/api/v1" + address)
                .then()
                .statusCode(403)
                .body("code", equalTo("wrong-room"))
                .body("rooms", contains("r2", asked))
                .body("detail", containsString("room r2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/versions", "/versions/1", "/versions/1/rows", "/compare?from=1&to=2"})
    void a_workstation_does_not_read_histories_not_even_of_its_room(String address) {
        SERVICE.workstation("r1")
                .get("/api/v1/charts/r1" + address)
                .then()
                .statusCode(403)
                .body("code", equalTo("not-allowed"));
    }

    @Test
    void a_workstation_has_no_session() {
        SERVICE.workstation("r1").get("/api/v1/session").then().statusCode(403).body("code", equalTo("not-allowed"));
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "WORKSTATION", mode = EnumSource.Mode.EXCLUDE)
    void every_person_reads_every_room_and_history(Role role) {
        SERVICE.person(role).get("/api/v1/rooms").then().statusCode(200).body("rooms.room", contains("r1", "r2"));
        SERVICE.person(role).get("/api/v1/rooms/r2").then().statusCode(200);
        SERVICE.person(role).get("/api/v1/rooms/r1/technique" + QUESTION).then().statusCode(200);
        SERVICE.person(role).get("/api/v1/charts/r1/versions").then().statusCode(200);
        SERVICE.person(role).get("/api/v1/session").then().statusCode(200).body("role", equalTo(role.slug()));
    }

    @Test
    void a_token_beside_a_session_counts_alone() {
        SERVICE.person(Role.LEAD)
                .header("Authorization", "Bearer wrong")
                .get("/api/v1/rooms")
                .then()
                .statusCode(401);
    }

    @Test
    void a_revoked_token_no_longer_works() {
        var people = SERVICE.services().people();
        var issued = people.issueRoomToken(Actor.system("test"), "r1", "lost laptop");
        var asked = SERVICE.anybody().header("Authorization", "Bearer " + issued.secret());
        asked.get("/api/v1/rooms").then().statusCode(200);
        people.revokeRoomToken(Actor.system("test"), issued.token().id());
        SERVICE.anybody()
                .header("Authorization", "Bearer " + issued.secret())
                .get("/api/v1/rooms")
                .then()
                .statusCode(401);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/docs", "/docs/docs.js", "/openapi.json", "/api/v1/health/live", "/api/v1/health/ready"})
    void documents_and_health_are_for_everybody(String address) {
        SERVICE.anybody().get(address).then().statusCode(200);
        SERVICE.anybody().head(address).then().statusCode(200);
    }

    @Test
    void an_address_that_is_none_does_not_ask_for_credentials() {
        SERVICE.anybody().get("/api/v1/nothing").then().statusCode(404).body("code", equalTo("not-found"));
        SERVICE.anybody().get("/api/v1/rooms/").then().statusCode(404);
        SERVICE.anybody().get("/API/V1/rooms").then().statusCode(404);
    }
}
