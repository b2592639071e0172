package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built jar's demo, as somebody meets it who tries the program for the first time. */
class DemoIT {

    private static final int TERMINATED = 143;

    @TempDir
    private Path folder;

    @Test
    void its_screen_tells_all_one_needs_and_its_one_request_works_as_it_stands() throws Exception {
        try (var demo = Program.start(folder, "", Program.jar("demo", "--port", "0", "--dir", "demo"))) {
            demo.await("Stop with Ctrl\\+C");
            var address = demo.await("http://127\\.0\\.0\\.1:\\d+");
            demo.await("Start page   " + address + "/\n");
            demo.await("demo-r1, demo-r2, demo-r3");
            demo.await("lead, radiographer, physicist, admin; password demo- and the name");
            var request = demo.await("curl .*");

            assertThat(CurlLine.parse(request).address().toString()).startsWith(address);
            requireTechnique(request);

            var ended = demo.terminate();
            assertThat(ended.exitCode()).isIn(0, TERMINATED);
            assertThat(ended.err()).isEmpty();
            assertThat(ended.out().lines().filter(line -> line.contains("curl ")))
                    .hasSize(1);
        }
    }

    private void requireTechnique(String request) throws Exception {
        var answer = CurlLine.parse(request).send(HttpClient.newHttpClient());
        assertThat(answer.statusCode()).as(request).isEqualTo(200);
        assertThat(new ObjectMapper().readTree(answer.body()).at("/set/mAs").isNumber())
                .isTrue();
        if (hasCurl()) {
            var typed = Program.run(folder, "", List.of("sh", "-c", request));
            assertThat(typed.exitCode()).as(typed.toString()).isZero();
            assertThat(typed.out()).isEqualTo(answer.body());
        }
    }

    private boolean hasCurl() {
        try {
            return Program.run(folder, "", List.of("curl", "--version")).exitCode() == 0;
        } catch (IOException missing) {
            return false;
        }
    }

    @Test
    void its_database_is_never_served_as_a_site() throws IOException {
        try (var demo = Program.start(folder, "", Program.jar("demo", "--port", "0", "--dir", "demo"))) {
            demo.await("Stop with Ctrl\\+C");
            demo.terminate();
        }
        Files.writeString(folder.resolve("password"), "demo\n");
        Files.writeString(
                folder.resolve("site.yaml"),
                """
                server: {port: 0}
                database: {url: "jdbc:h2:file:./demo/wallchart-demo", user: demo, passwordFile: ./password}
                """);

        var ended = Program.run(folder, "", Program.jar("serve", "--config", "site.yaml"));

        assertThat(ended.exitCode()).as(ended.toString()).isEqualTo(1);
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .startsWith("wallchart: ")
                .contains("was made as a demo and cannot be opened as a site");
        assertThat(ended.out()).isEmpty();
    }
}
