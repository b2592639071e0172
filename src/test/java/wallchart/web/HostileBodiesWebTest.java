package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.web.RawClient.Answer;
import wallchart.web.request.Bodies;

/** What no honest client sends as the body of a sign-in, and bodies that never end. */
class HostileBodiesWebTest {

    /** More than the server has threads. */
    private static final int MANY = 260;

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static Answer post(String type, String body) {
        var bytes = body.getBytes(StandardCharsets.UTF_8);
        return new RawClient(SERVICE.port()).send(out -> {
            write(out, head(type) + "Content-Length: " + bytes.length + "\r\n\r\n");
            out.write(bytes);
        });
    }

    private static String head(String type) {
        return "POST /api/v1/session HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: " + type + "\r\n";
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String ofLength(int bytes) {
        return "{" + " ".repeat(bytes - 2) + "}";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "{",
                "{}{}",
                "{\"name\":\"a\",\"name\":\"b\",\"password\":\"x\"}",
                "{\"name\":\"a\",\"password\":\"x\",\"role\":\"lead\"}",
                "{\"name\":7,\"password\":\"x\"}",
                "{\"name\":1.5,\"password\":\"x\"}",
                "{\"name\":true,\"password\":\"x\"}",
                "{\"name\":[\"a\"],\"password\":\"x\"}",
                "{\"name\":1e999999999,\"password\":\"x\"}",
            })
    void a_body_that_is_not_two_texts(String body) {
        HostileRequestsWebTest.assertProblem(post("application/json", body), 400);
    }

    @Test
    void a_body_ten_thousand_levels_deep() {
        HostileRequestsWebTest.assertProblem(post("application/json", "[".repeat(10_000)), 400);
        HostileRequestsWebTest.assertProblem(post("application/json", "{\"name\":".repeat(5_000)), 400);
        HostileRequestsWebTest.assertProblem(post("application/json", "{\"name\":" + "[".repeat(10_000)), 400);
    }

    @Test
    void a_number_or_a_member_name_of_fifty_thousand_characters() {
        HostileRequestsWebTest.assertProblem(post("application/json", "{\"name\":" + "9".repeat(50_001) + "}"), 400);
        HostileRequestsWebTest.assertProblem(post("application/json", "{\"" + "n".repeat(50_001) + "\":1}"), 400);
    }

    @Test
    void half_a_character_is_no_password() {
        var answer = post("application/json", "{\"name\":\"\\ud800\",\"password\":\"\\udfff\"}");
        HostileRequestsWebTest.assertProblem(answer, 401);
    }

    @Test
    void a_character_set_that_nobody_knows() {
        var body = "{\"name\":\"nobody.1\",\"password\":\"x\"}";
        HostileRequestsWebTest.assertProblem(post("application/json; charset=utf-7", body), 401);
        HostileRequestsWebTest.assertProblem(post("text/plain; charset=utf-7", body), 415);
    }

    @Test
    void a_body_of_the_largest_size_is_read_and_one_byte_more_is_not() {
        HostileRequestsWebTest.assertProblem(post("application/json", ofLength(Bodies.LARGEST)), 400);
        HostileRequestsWebTest.assertProblem(post("application/json", ofLength(Bodies.LARGEST + 1)), 413);
    }

    @Test
    void a_body_in_pieces_of_one_byte_is_read_like_any_other() {
        var body = "{\"name\":\"nobody.2\",\"password\":\"x\"}";
        var answer = new RawClient(SERVICE.port()).send(out -> {
            write(out, head("application/json") + "Transfer-Encoding: chunked\r\n\r\n");
            for (var piece : body.split("")) {
                write(out, "1\r\n" + piece + "\r\n");
                out.flush();
            }
            write(out, "0\r\n\r\n");
        });
        HostileRequestsWebTest.assertProblem(answer, 401);
    }

    @Test
    void a_body_that_ends_early() throws Exception {
        try (var socket = new Socket("127.0.0.1", SERVICE.port())) {
            write(socket.getOutputStream(), head("application/json") + "Content-Length: 100\r\n\r\n{");
            socket.shutdownOutput();
            socket.setSoTimeout(10_000);
            var answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 400 ").contains("application/problem+json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST /api/v1/session", "GET /api/v1/rooms", "GET /"})
    void many_bodies_that_do_not_come_keep_nobody_from_an_answer(String start) throws Exception {
        var waiting = new ArrayList<Socket>();
        try {
            for (int i = 0; i < MANY; i++) {
                var socket = new Socket("127.0.0.1", SERVICE.port());
                waiting.add(socket);
                write(
                        socket.getOutputStream(),
                        start + " HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                                + "Transfer-Encoding: chunked\r\n\r\n1\r\n{\r\n");
            }
            var answer = new RawClient(SERVICE.port()).get("/api/v1/health/live");
            assertThat(answer.status()).isEqualTo(200);
        } finally {
            for (var socket : waiting) {
                socket.close();
            }
        }
    }
}
