package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/** The administrator keeps accounts and room tokens; each act stands in the ledger, and no secret does. */
class AccountsWebTest {

    private static final String PEOPLE = "/api/v1/people";
    private static final String TOKENS = "/api/v1/room-tokens";
    private static final String GOOD_PASSWORD = "four lead aprons hang there";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static RequestSpecification administrator() {
        return SERVICE.person(Role.ADMINISTRATOR)
                .header("X-CSRF-Token", SERVICE.signedIn(Role.ADMINISTRATOR).csrfToken())
                .contentType("application/json");
    }

    private static Response add(String name) {
        return administrator()
                .body(Map.of(
                        "name", name, "printedName", "New Person", "role", "radiographer", "password", GOOD_PASSWORD))
                .post(PEOPLE);
    }

    private static Response signIn(String name, String password) {
        return SERVICE.anybody()
                .contentType("application/json")
                .body(Map.of("name", name, "password", password))
                .post("/api/v1/session");
    }

    @Test
    void somebody_new_gets_an_account_and_signs_in_with_it() {
        var added = add("new-one");
        added.then().statusCode(201).body("role", equalTo("radiographer")).body("disabledAt", nullValue());
        assertThat(added.header("Location")).isEqualTo(PEOPLE + "/" + added.path("id"));
        assertThat(added.header("ETag")).isNotBlank();
        SERVICE.person(Role.LEAD)
                .get(added.header("Location"))
                .then()
                .statusCode(200)
                .header("ETag", added.header("ETag"))
                .body("printedName", equalTo("New Person"));
        signIn("new-one", GOOD_PASSWORD).then().statusCode(200);
        add("new-one").then().statusCode(409).body("code", equalTo("name-taken"));
    }

    @Test
    void a_short_or_common_password_is_refused_by_its_name() {
        for (var password : new String[] {"8letters", "password12345678"}) {
            administrator()
                    .body(Map.of("name", "hasty", "printedName", "Hasty", "role", "lead", "password", password))
                    .post(PEOPLE)
                    .then()
                    .statusCode(400)
                    .body("errors[0].pointer", equalTo("/password"));
        }
        SERVICE.person(Role.ADMINISTRATOR).get(PEOPLE).then().body("people.name", not(hasItems("hasty")));
    }

    @Test
    void a_change_needs_the_tag_of_what_was_seen() {
        var added = add("tagged");
        var address = added.header("Location") + "/role";
        administrator()
                .body(Map.of("role", "lead"))
                .put(address)
                .then()
                .statusCode(428)
                .body("code", equalTo("precondition-required"));
        administrator()
                .header("If-Match", added.header("ETag"))
                .body(Map.of("role", "lead"))
                .put(address)
                .then()
                .statusCode(200)
                .body("role", equalTo("lead"))
                .header("ETag", not(equalTo(added.header("ETag"))));
        administrator()
                .header("If-Match", added.header("ETag"))
                .body(Map.of("role", "physicist"))
                .put(address)
                .then()
                .statusCode(412)
                .body("code", equalTo("precondition-failed"));
    }

    @Test
    void whoever_is_disabled_is_out_within_a_second_and_may_come_back() {
        var added = add("leaving");
        var signedIn = signIn("leaving", GOOD_PASSWORD);
        var cookie = signedIn.header("Set-Cookie").split(";")[0];
        SERVICE.anybody().header("Cookie", cookie).get("/api/v1/rooms").then().statusCode(200);
        var disabled = administrator()
                .header("If-Match", added.header("ETag"))
                .body(Map.of("reason", "Left the department"))
                .post(added.header("Location") + "/disable");
        disabled.then().statusCode(200).body("disabledAt", notNullValue());
        SERVICE.anybody().header("Cookie", cookie).get("/api/v1/rooms").then().statusCode(401);
        signIn("leaving", GOOD_PASSWORD).then().statusCode(401);
        administrator()
                .header("If-Match", disabled.header("ETag"))
                .body(Map.of("reason", "Came back after leave"))
                .post(added.header("Location") + "/enable")
                .then()
                .statusCode(200)
                .body("disabledAt", nullValue());
        signIn("leaving", GOOD_PASSWORD).then().statusCode(200);
    }

    @Test
    void the_last_administrator_stays() {
        SERVICE.signedIn(Role.ADMINISTRATOR);
        int id = SERVICE.person(Role.ADMINISTRATOR).get("/api/v1/session").path("id") instanceof Integer own
                ? own
                : SERVICE.person(Role.ADMINISTRATOR).get(PEOPLE).path("people.find { it.role == 'administrator' }.id");
        var tag = SERVICE.person(Role.ADMINISTRATOR).get(PEOPLE + "/" + id).header("ETag");
        administrator()
                .header("If-Match", tag)
                .body(Map.of("reason", "Nobody is needed here"))
                .post(PEOPLE + "/" + id + "/disable")
                .then()
                .statusCode(409)
                .body("code", equalTo("last-administrator"));
        administrator()
                .header("If-Match", tag)
                .body(Map.of("role", "lead"))
                .put(PEOPLE + "/" + id + "/role")
                .then()
                .statusCode(409);
    }

    @Test
    void a_room_token_is_shown_once_works_and_is_revoked() {
        var issued = administrator()
                .body(Map.of("room", "r1", "label", "by the door"))
                .post(TOKENS);
        issued.then().statusCode(201).body("secret", notNullValue());
        String secret = issued.path("secret");
        SERVICE.anybody()
                .header("Authorization", "Bearer " + secret)
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(200);
        var seen = SERVICE.person(Role.LEAD).get(issued.header("Location"));
        assertThat(seen.asString()).doesNotContain(secret);
        administrator()
                .header("If-Match", seen.header("ETag"))
                .post(issued.header("Location") + "/revoke")
                .then()
                .statusCode(200)
                .body("revokedAt", notNullValue());
        SERVICE.anybody()
                .header("Authorization", "Bearer " + secret)
                .get("/api/v1/rooms/r1")
                .then()
                .statusCode(401);
        administrator()
                .body(Map.of("room", "r9", "label", "nowhere"))
                .post(TOKENS)
                .then()
                .statusCode(400)
                .body("errors[0].pointer", equalTo("/room"));
    }

    @Test
    void every_act_is_in_the_ledger_and_no_secret_is() {
        var added = add("recorded");
        var issued =
                administrator().body(Map.of("room", "r2", "label", "second")).post(TOKENS);
        var ledger = SERVICE.person(Role.PHYSICIST).get("/api/v1/audit/export").asString();
        assertThat(ledger)
                .contains("\"action\":\"account-added\"", "\"object\":\"person/" + added.path("id") + "\"")
                .contains("\"action\":\"room-token-issued\"")
                .doesNotContain(GOOD_PASSWORD)
                .doesNotContain(issued.<String>path("secret"));
        SERVICE.person(Role.PHYSICIST).get("/api/v1/audit/verification").then().body("sound", equalTo(true));
    }

    @Test
    void a_room_is_answered_while_an_account_is_throttled() {
        add("besieged");
        for (int i = 0; i < 12; i++) {
            signIn("besieged", "wrong password number " + i);
        }
        signIn("besieged", GOOD_PASSWORD).then().statusCode(429).header("Retry-After", notNullValue());
        SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21")
                .then()
                .statusCode(200)
                .body("room", equalTo("r1"));
    }

    @Test
    void people_change_their_own_password_with_the_old_one() {
        add("careful");
        var signedIn = signIn("careful", GOOD_PASSWORD);
        var own = SERVICE.anybody()
                .header("Cookie", signedIn.header("Set-Cookie").split(";")[0])
                .header("X-CSRF-Token", signedIn.<String>path("csrfToken"))
                .contentType("application/json");
        io.restassured.RestAssured.given(own)
                .body(Map.of("current", "not the right one at all", "next", "another long password here"))
                .put("/api/v1/session/password")
                .then()
                .statusCode(403)
                .body("code", equalTo("wrong-password"));
        io.restassured.RestAssured.given(own)
                .body(Map.of("current", GOOD_PASSWORD, "next", "another long password here"))
                .put("/api/v1/session/password")
                .then()
                .statusCode(204);
        signIn("careful", "another long password here").then().statusCode(200);
    }

    @Test
    void an_unknown_account_is_told() {
        SERVICE.person(Role.LEAD).get(PEOPLE + "/4711").then().statusCode(404).body("detail", containsString("4711"));
    }
}
