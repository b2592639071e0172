package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.restassured.RestAssured;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.web.problem.ProblemCode;

/** The OpenAPI document and the routes say the same, and the check that holds answers against it has teeth. */
class OpenApiDocumentTest {

    private static final String RATE = "/components/schemas/Technique/properties/roundingDeviation";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static Set<String> routes() {
        var routes = new TreeSet<String>();
        var pages = Pages.of(SERVICE.services(), new SessionCookie(false));
        Javalin.create(config -> {
            config.events.handlerAdded(route -> {
                if (!route.getHttpMethod().name().equals("HEAD")) {
                    routes.add(route.getHttpMethod() + " " + route.getPath());
                }
            });
            config.startup.startupWatcherEnabled = false;
            Routes.declare(config.routes, pages);
        });
        return routes;
    }

    @Test
    void every_route_is_documented_and_everything_documented_is_a_route() {
        assertThat(routes()).hasSizeGreaterThan(10).isEqualTo(ApiDocument.ours().operations());
    }

    @Test
    void a_route_that_is_taken_out_of_the_document_shows() {
        var drifted = ApiDocument.ours().with(document -> ((ObjectNode) document.get("paths")).remove("/api/v1/rooms"));
        assertThat(routes()).isNotEqualTo(drifted.operations());
    }

    @Test
    void every_example_is_valid() {
        var document = ApiDocument.ours();
        assertThat(document.examples()).hasSizeGreaterThan(3).allSatisfy((schema, example) -> assertThat(
                        document.violations(schema, example.toString()))
                .as(schema)
                .isEmpty());
    }

    @Test
    void every_problem_code_with_a_place_in_the_document_is_one_of_ours() {
        var text = ApiDocument.ours().text();
        var elsewhere = Set.of(ProblemCode.METHOD_NOT_ALLOWED, ProblemCode.URI_TOO_LONG, ProblemCode.HEADERS_TOO_LARGE);
        for (var code : ProblemCode.values()) {
            assertThat(elsewhere.contains(code) || text.contains("\"" + code.slug() + "\""))
                    .as(code.slug())
                    .isTrue();
        }
    }

    private static void assertCaught(Consumer<ObjectNode> drift, String complaint) {
        var drifted = new ConformsToOpenApi(ApiDocument.ours().with(document -> drift.accept((ObjectNode) document)));
        var client = RestAssured.given()
                .baseUri("http://127.0.0.1")
                .port(SERVICE.port())
                .header("Authorization", "Bearer " + SERVICE.token("r1"))
                .filter(drifted);
        assertThatThrownBy(() -> client.get("/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(complaint);
    }

    private static ObjectNode at(ObjectNode document, String pointer) {
        return (ObjectNode) document.at(pointer);
    }

    @Test
    void a_status_that_is_not_declared_is_caught() {
        assertCaught(
                document -> at(document, "/paths/~1api~1v1~1rooms~1{room}~1technique/get/responses")
                        .remove("200"),
                "undeclared status");
    }

    @Test
    void an_address_that_is_not_declared_is_caught() {
        assertCaught(
                document -> at(document, "/paths").remove("/api/v1/rooms/{room}/technique"),
                "undeclared address answered");
    }

    @Test
    void another_media_type_is_caught() {
        assertCaught(
                document -> {
                    var content = at(document, "/paths/~1api~1v1~1rooms~1{room}~1technique/get/responses/200/content");
                    content.set("application/xml", content.remove("application/json"));
                },
                "undeclared media type");
    }

    @Test
    void a_header_that_is_promised_and_missing_is_caught() {
        assertCaught(
                document -> at(document, "/paths/~1api~1v1~1rooms~1{room}~1technique/get/responses/200")
                        .withObject("/headers")
                        .putObject("Retry-After"),
                "missing header Retry-After");
    }

    @Test
    void a_member_of_another_type_is_caught() {
        assertCaught(document -> at(document, RATE).put("type", "string"), "roundingDeviation");
    }

    @Test
    void a_member_that_is_not_declared_is_caught() {
        assertCaught(
                document ->
                        at(document, "/components/schemas/Technique/properties").remove("cautions"),
                "cautions");
    }

    @Test
    void a_member_that_is_promised_and_missing_is_caught() {
        assertCaught(
                document -> at(document, "/components/schemas/Dose")
                        .withArray("required")
                        .add("patient"),
                "patient");
    }

    @Test
    void a_number_beyond_its_limit_is_caught() {
        assertCaught(document -> at(document, RATE).put("minimum", 1), "minimum");
    }

    @Test
    void an_instant_of_another_shape_is_caught() {
        assertCaught(document -> at(document, "/components/schemas/UtcInstant").put("format", "date"), "full-date");
    }
}
