package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.equalTo;

import io.javalin.config.JavalinConfig;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import wallchart.people.Role;

/** Starting, stopping and failing. */
class WebServerTest {

    private static final WebSettings ANY_PORT = new WebSettings("127.0.0.1", 0, false);

    private static WebServer serving(Consumer<JavalinConfig> routes) {
        return WebServer.start(ANY_PORT, routes);
    }

    private static Response get(WebServer server, String path) {
        return RestAssured.given()
                .baseUri("http://127.0.0.1")
                .port(server.port())
                .get(path);
    }

    @Test
    void a_route_without_a_role_does_not_start() {
        assertThatThrownBy(() -> serving(config -> config.routes.get("/open", ctx -> ctx.result("open"))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("GET /open has no role");
    }

    @Test
    void a_port_in_use_is_one_clear_line() throws IOException {
        try (var taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            var settings = new WebSettings("127.0.0.1", taken.getLocalPort(), false);
            assertThatThrownBy(() -> WebServer.start(settings, config -> {}))
                    .isInstanceOf(PortInUse.class)
                    .hasMessageContaining("127.0.0.1 port " + taken.getLocalPort())
                    .hasMessageNotContaining("\n");
        }
    }

    @Test
    void only_the_named_host_is_bound() throws IOException {
        try (var server = serving(config -> {});
                var beside = new ServerSocket(server.port(), 1, InetAddress.getByName("127.0.0.2"))) {
            assertThat(beside.isBound()).isTrue();
        }
    }

    @Test
    void settings_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new WebSettings(" ", 0, false)).hasMessageContaining("host is empty");
        assertThatThrownBy(() -> new WebSettings("localhost", 70_000, false)).hasMessageContaining("70000");
    }

    @Test
    void a_fault_says_nothing_but_its_id() {
        try (var server = serving(config -> config.routes.get(
                "/fault",
                ctx -> {
                    throw new IllegalStateException("secret of the program");
                },
                Access.ANYBODY))) {
            var answer = get(server, "/fault");
            answer.then().statusCode(500).body("code", equalTo("fault"));
            assertThat(answer.asString()).doesNotContain("secret", "IllegalState", "java");
            assertThat(answer.<String>path("requestId")).isEqualTo(answer.header("X-Request-Id"));
        }
    }

    @Test
    void an_error_of_the_machine_is_answered_like_a_fault() {
        try (var server = serving(config -> config.routes.get(
                "/error",
                ctx -> {
                    throw new StackOverflowError("secret of the machine");
                },
                Access.ANYBODY))) {
            var answer = get(server, "/error");
            answer.then()
                    .statusCode(500)
                    .contentType("application/problem+json")
                    .body("code", equalTo("fault"));
            assertThat(answer.asString()).doesNotContain("secret");
        }
    }

    @Test
    void a_request_under_way_is_finished_before_the_server_stops() throws Exception {
        var begun = new CountDownLatch(1);
        var server = serving(config -> config.routes.get(
                "/slow",
                ctx -> {
                    begun.countDown();
                    TimeUnit.MILLISECONDS.sleep(500);
                    ctx.result("done");
                },
                Access.ANYBODY));
        var answer = CompletableFuture.supplyAsync(() -> get(server, "/slow").asString());
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        server.close();
        assertThat(answer.get(10, TimeUnit.SECONDS)).isEqualTo("done");
    }

    @Test
    void when_the_database_is_away_the_service_says_so_and_still_answers_from_memory() {
        var service = new RunningService().start();
        var question = "/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21";
        var cookie = service.signedIn(Role.LEAD).cookie();
        service.workstation("r1").get(question).then().statusCode(200);
        service.database().close();
        service.anybody()
                .get("/api/v1/health/ready")
                .then()
                .statusCode(503)
                .header("Retry-After", "5")
                .body("code", equalTo("unavailable"));
        service.anybody()
                .header("Cookie", cookie + "x")
                .get("/api/v1/rooms")
                .then()
                .statusCode(503);
        service.anybody().get("/api/v1/health/live").then().statusCode(200);
        service.stop();
    }
}
