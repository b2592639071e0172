package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.web.RawClient.Answer;
import wallchart.web.problem.Problem;

/** What no honest client sends gets a problem like everything else: never 200, never 500, never a page of the HTTP layer. */
class HostileRequestsWebTest {

    private static final int TEN_MEGABYTES = 10 * 1024 * 1024;
    private static final String TECHNIQUE = "/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static RawClient client() {
        return new RawClient(SERVICE.port());
    }

    private static String asWorkstation() {
        return "Authorization: Bearer " + SERVICE.token("r1");
    }

    static void assertProblem(Answer answer, int... statuses) {
        assertThat(statuses).as(answer.toString()).contains(answer.status());
        assertThat(answer.headers().get("content-type")).isEqualTo(Problem.MEDIA_TYPE);
        assertThat(answer.headers()).containsKeys("x-request-id", "content-security-policy", "x-content-type-options");
        assertThat(answer.headers()).doesNotContainKeys("server", "x-powered-by");
        assertThat(ApiDocument.ours().violations("/components/schemas/Problem", answer.body()))
                .isEmpty();
        assertThat(answer.body()).contains("\"status\":" + answer.status()).doesNotContainIgnoringCase("jetty");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/v1/rooms/../rooms",
                "/docs/../../web/openapi.yaml",
                "/docs/..",
                "/docs/.",
                "/./docs",
                "/docs/%2e%2e/openapi.json",
                "/docs/%2E%2e",
                "/docs/.%2e",
                "/docs/%252e%252e",
                "/docs/..%2f..%2fetc%2fpasswd",
                "/docs/%5c..%5c",
                "/docs\\docs.js",
                "//docs",
                "/api//v1/rooms",
                "/api/v1/rooms//technique",
                "/docs;x=1",
                "/docs/docs.js;jsessionid=1",
                "/docs%3bx",
                "/docs/%00",
                "/docs/docs.js%00.css",
                "/docs/%zz",
                "/docs/%",
                "/docs/%ff",
                "/docs/é",
                "/docs/.git",
                "/%",
                "docs",
                "*",
            })
    void a_path_that_is_not_plain(String path) {
        assertProblem(client().get(path), 400, 404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"%", "%2", "%２１", "%zz", "%ff", "21%00", "21&", "21&&", "21&%c0%80=1", "21\u00e9"})
    void a_query_that_is_not_well_formed(String thickness) {
        assertProblem(client().get(TECHNIQUE + thickness, asWorkstation()), 400);
    }

    @Test
    void an_absolute_target_of_another_host() {
        assertProblem(client().get("http://elsewhere.example/nothing"), 400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GARBAGE\r\n\r\n",
                "GET /\r\n\r\n",
                "GET / HTTP/1.1\r\n\r\n",
                "GET / HTTP/9.9\r\nHost: x\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nHost: y\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nBad Header: y\r\n\r\n",
                "POST /api/v1/session HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\nContent-Length: 6\r\n\r\n",
                "POST /api/v1/session HTTP/1.1\r\nHost: x\r\nContent-Length: -1\r\n\r\n",
                "POST /api/v1/session HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
            })
    void a_request_that_is_no_http(String text) {
        assertProblem(client().send(text), 400);
    }

    @Test
    void headers_of_sixteen_kilobytes() {
        assertProblem(client().get("/", "X-Long: " + "x".repeat(16 * 1024)), 431);
    }

    @Test
    void an_address_of_sixteen_kilobytes() {
        assertProblem(client().get("/" + "x".repeat(16 * 1024)), 414, 431);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"POST /api/v1/session", "GET " + TECHNIQUE + "21", "GET /", "DELETE /api/v1/session", "PUT /docs"
            })
    void ten_megabytes_of_stated_length(String start) {
        assertProblem(
                client().send(out -> {
                    write(out, head(start) + "Content-Length: " + TEN_MEGABYTES + "\r\n\r\n");
                    for (int sent = 0; sent < TEN_MEGABYTES; sent += 8192) {
                        out.write(new byte[8192]);
                    }
                }),
                413);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"POST /api/v1/session", "GET " + TECHNIQUE + "21", "GET /", "DELETE /api/v1/session", "PUT /docs"
            })
    void ten_megabytes_without_a_stated_length(String start) {
        assertProblem(
                client().send(out -> {
                    write(out, head(start) + "Transfer-Encoding: chunked\r\n\r\n");
                    for (int sent = 0; sent < TEN_MEGABYTES; sent += 8192) {
                        write(out, "2000\r\n");
                        out.write(new byte[8192]);
                        write(out, "\r\n");
                    }
                    write(out, "0\r\n\r\n");
                }),
                413);
    }

    private static String head(String start) {
        return start + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + asWorkstation() + "\r\n";
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void a_small_body_on_a_get_changes_nothing() {
        var answer = client().send("GET " + TECHNIQUE + "21 HTTP/1.1\r\nHost: x\r\nConnection: close\r\n"
                + asWorkstation() + "\r\nContent-Length: 2\r\n\r\n{}");
        assertThat(answer.status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE", "BREW"})
    void a_method_that_an_address_does_not_take(String method) {
        var answer = client().send(method + " /api/v1/rooms HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
        assertProblem(answer, 405);
        assertThat(answer.headers().get("allow")).isEqualTo("GET, HEAD");
    }
}
