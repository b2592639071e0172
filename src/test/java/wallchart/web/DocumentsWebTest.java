package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.web.problem.ProblemCode;

/** The pages about the service itself, and what stands on every answer. */
class DocumentsWebTest {

    private static final Pattern LOADED = Pattern.compile("(?:src|href)=\"([^\"]+)\"");

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @Test
    void the_first_page_says_what_the_service_is_not_and_what_to_check() {
        SERVICE.anybody()
                .get("/")
                .then()
                .statusCode(200)
                .contentType("text/html;charset=utf-8")
                .body(containsString("drives no generator"))
                .body(containsString("keeps no patient data"))
                .body(containsString("replaces no judgement"))
                .body(containsString("Identify the patient"))
                .body(containsString("check pregnancy status"))
                .body(containsString("href=\"/docs\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/docs", "/problems/not-found"})
    void a_page_loads_nothing_from_another_host_and_nothing_that_is_missing(String page) {
        var links = LOADED.matcher(SERVICE.anybody().get(page).asString());
        assertThat(links.find()).isTrue();
        do {
            if (!links.group(1).equals("data:,")) {
                assertThat(links.group(1)).startsWith("/");
                SERVICE.anybody().get(links.group(1)).then().statusCode(200);
            }
        } while (links.find());
    }

    @Test
    void the_document_is_openapi_3_1() {
        SERVICE.anybody()
                .get("/openapi.json")
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body("openapi", matchesPattern("3\\.1\\.\\d"))
                .body(not(containsString("nullable")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/docs/page.css",
                "/docs/docs.js",
                "/docs/swagger-ui.css",
                "/docs/swagger-ui-bundle.js",
                "/openapi.json",
                "/"
            })
    void a_file_that_has_not_changed_is_not_sent_again(String address) {
        var tag = SERVICE.anybody().get(address).header("ETag");
        var again = SERVICE.anybody().header("If-None-Match", tag).get(address);
        assertThat(again.statusCode()).isEqualTo(304);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/docs/openapi.yaml",
                "/docs/home.html",
                "/docs/index.html",
                "/webjars/swagger-ui",
                "/favicon.ico"
            })
    void files_that_are_not_listed_are_not_served(String address) {
        SERVICE.anybody().get(address).then().statusCode(404);
    }

    @ParameterizedTest
    @EnumSource
    void every_problem_type_can_be_looked_up(ProblemCode code) {
        SERVICE.anybody()
                .get("/problems/" + code.slug())
                .then()
                .statusCode(200)
                .body(containsString(code.title()))
                .body(containsString("HTTP status " + code.status()))
                .body(not(containsString("{")));
    }

    @Test
    void a_problem_type_that_is_none() {
        SERVICE.anybody().get("/problems/bad-mood").then().statusCode(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/docs",
                "/openapi.json",
                "/nothing",
                "/api/v1/rooms",
                "/api/v1/health/live?x=1",
                "/problems/fault"
            })
    void every_answer_carries_the_security_headers_and_an_id(String address) {
        SERVICE.anybody()
                .get(address)
                .then()
                .header("Content-Security-Policy", containsString("default-src 'self'"))
                .header("Content-Security-Policy", containsString("frame-ancestors 'none'"))
                .header("Content-Security-Policy", not(containsString("unsafe")))
                .header("X-Content-Type-Options", equalTo("nosniff"))
                .header("X-Frame-Options", equalTo("DENY"))
                .header("Referrer-Policy", equalTo("no-referrer"))
                .header("Cross-Origin-Opener-Policy", equalTo("same-origin"))
                .header("Cross-Origin-Resource-Policy", equalTo("same-origin"))
                .header("X-Request-Id", matchesPattern("[0-9a-f]+-[0-9a-f]+"))
                .header("Server", nullValue())
                .header("X-Powered-By", nullValue());
    }

    @Test
    void two_requests_have_two_ids() {
        assertThat(SERVICE.anybody().get("/").header("X-Request-Id"))
                .isNotEqualTo(SERVICE.anybody().get("/").header("X-Request-Id"));
    }
}
