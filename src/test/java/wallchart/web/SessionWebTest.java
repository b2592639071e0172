package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;

import io.restassured.response.Response;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** Signing in and out. */
class SessionWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static Response signIn(Object body) {
        return SERVICE.anybody().contentType("application/json").body(body).post("/api/v1/session");
    }

    private static Map<String, String> credentials(String name, String password) {
        return Map.of("name", name, "password", password);
    }

    @Test
    void somebody_signs_in_sees_who_they_are_and_signs_out() {
        Department.person(SERVICE.services().people(), "comes-and-goes", Role.LEAD);
        var in = signIn(credentials("comes-and-goes", Department.password("comes-and-goes")));
        in.then()
                .statusCode(200)
                .header("Cache-Control", "no-store")
                .body("printedName", equalTo("Pat comes-and-goes"))
                .body("role", equalTo("lead"))
                .body("expiresAt", equalTo("2026-03-02T20:00:00Z"));
        var cookie = in.header("Set-Cookie");
        assertThat(cookie).matches("wallchart-session=[A-Za-z0-9_-]{43}; Path=/; HttpOnly; SameSite=Strict");

        var session = cookie.split(";")[0];
        SERVICE.anybody()
                .header("Cookie", session)
                .get("/api/v1/session")
                .then()
                .statusCode(200)
                .body("name", equalTo("comes-and-goes"))
                .body("$", not(hasKey("csrfToken")));
        var out = SERVICE.anybody()
                .header("Cookie", session)
                .header("X-CSRF-Token", in.<String>path("csrfToken"))
                .delete("/api/v1/session");
        out.then().statusCode(204);
        assertThat(out.header("Set-Cookie")).contains("wallchart-session=;", "Max-Age=0");
        SERVICE.anybody()
                .header("Cookie", session)
                .get("/api/v1/session")
                .then()
                .statusCode(401);
    }

    @Test
    void signing_out_needs_the_token_of_the_sign_in() {
        SERVICE.person(Role.RADIOGRAPHER)
                .delete("/api/v1/session")
                .then()
                .statusCode(403)
                .body("code", equalTo("csrf-token"));
        SERVICE.person(Role.RADIOGRAPHER)
                .header("X-CSRF-Token", SERVICE.signedIn(Role.PHYSICIST).csrfToken())
                .delete("/api/v1/session")
                .then()
                .statusCode(403);
        SERVICE.person(Role.RADIOGRAPHER).get("/api/v1/session").then().statusCode(200);
    }

    @Test
    void a_wrong_password_and_an_unknown_name_cannot_be_told_apart() {
        Department.person(SERVICE.services().people(), "known", Role.LEAD);
        var wrong = signIn(credentials("known", "this is not the password"));
        var unknown = signIn(credentials("unknown", "this is not the password"));
        wrong.then()
                .statusCode(401)
                .body("code", equalTo("wrong-name-or-password"))
                .header("WWW-Authenticate", notNullValue());
        unknown.then().statusCode(401);
        assertThat(wrong.header("Set-Cookie")).isNull();
        assertThat(unknown.<String>path("detail")).isEqualTo(wrong.path("detail"));
    }

    @Test
    void too_many_wrong_passwords_have_to_wait() {
        for (int i = 0; i < 5; i++) {
            signIn(credentials("guessed", "this is guess " + i)).then().statusCode(401);
        }
        var answer = signIn(credentials("guessed", "this is guess 5"));
        answer.then().statusCode(429).body("code", equalTo("too-many-attempts"));
        assertThat(Integer.parseInt(answer.header("Retry-After"))).isBetween(1, 300);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'name':'lead'}|/password",
                "{'name':'','password':'x'}|/name",
                "{'name':null,'password':'x'}|/name",
                "{'name':'lead','password':'x','role':'lead'}|/role",
                "{'name':['lead'],'password':'x'}|/name",
                "{'name':{'a':1},'password':'x'}|/name",
                "[]|''",
                "'lead'|''",
                "null|''",
                "{'name':'lead'|''",
                "{'name':'lead','name':'other','password':'x'}|''",
                "{'name':'lead','password':'x'} more|''",
                "{'a/b~c':1}|/a~1b~0c",
                "NaN|''",
                "' '|''",
            })
    void a_body_that_is_not_what_it_should_be_is_pointed_at(String body, String pointer) {
        signIn(body.replace('\'', '"'))
                .then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"))
                .body("errors[0].pointer", equalTo(pointer));
    }

    @Test
    void a_body_nested_a_thousand_deep_is_refused() {
        signIn("[".repeat(1000)).then().statusCode(400);
    }

    @Test
    void a_password_is_never_repeated() {
        var answer = signIn("{\"name\":\"\",\"password\":\"" + "secret".repeat(100) + "\"}");
        answer.then().statusCode(400);
        assertThat(answer.asString()).doesNotContain("secret");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "application/jsonp"})
    void what_a_form_of_another_site_can_send_is_no_sign_in(String mediaType) {
        SERVICE.anybody()
                .header("Content-Type", mediaType)
                .post("/api/v1/session")
                .then()
                .statusCode(415)
                .body("code", equalTo("unsupported-media-type"));
    }

    @Test
    void a_session_ends_when_nobody_uses_it() {
        Department.person(SERVICE.services().people(), "goes-to-lunch", Role.LEAD);
        var in = signIn(credentials("goes-to-lunch", Department.password("goes-to-lunch")));
        var session = in.header("Set-Cookie").split(";")[0];
        SERVICE.clock().advance(Duration.ofMinutes(16));
        SERVICE.anybody()
                .header("Cookie", session)
                .get("/api/v1/session")
                .then()
                .statusCode(401);
        SERVICE.clock().set(RunningService.NOW);
    }

    @Test
    void over_tls_the_cookie_is_bound_to_the_host() {
        var secure = new RunningService(true).start();
        assertThat(secure.signedIn(Role.LEAD).cookie()).startsWith("__Host-wallchart-session=");
        secure.person(Role.LEAD).get("/api/v1/session").then().statusCode(200);
        secure.stop();
    }
}
