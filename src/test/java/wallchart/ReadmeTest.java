package wallchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.CookieManager;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.ParameterException;

/** What the README shows is what happens: its requests, its answer, its commands. */
class ReadmeTest {

    private static final String SHOWN_ADDRESS = "http://127.0.0.1:7070";
    private static final String JAR = "java -jar target/wallchart.jar";
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    @TempDir
    private static Path folder;

    private static Application demo;
    private static String address;

    private final ShownPage readme = ShownPage.read("README.md");
    private String token = "";
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    ReadmeTest() throws IOException {}

    @BeforeAll
    static void start_the_demo() {
        demo = new DemoDepartment(Path.of("demo-data"), folder, 0, false).start(Clock.systemUTC());
        address = "http://127.0.0.1:" + demo.port();
    }

    @AfterAll
    static void stop_the_demo() {
        demo.close();
    }

    @Test
    void every_request_it_shows_is_answered() throws Exception {
        var requests = readme.commands("curl");

        assertThat(requests).hasSizeGreaterThanOrEqualTo(3);
        for (var request : requests) {
            assertThat(send(request).statusCode()).as(request).isEqualTo(200);
        }
    }

    @Test
    void every_address_it_names_exists() throws Exception {
        var signIn = readme.commands("curl").stream()
                .filter(line -> line.contains("/session"))
                .findFirst()
                .orElseThrow();
        send(signIn);

        var paths = readme.inBackticks().stream()
                .filter(word -> word.startsWith("/"))
                .toList();
        assertThat(paths).hasSizeGreaterThanOrEqualTo(10);
        for (var path : paths) {
            assertThat(status(path)).as(path).isEqualTo(200);
        }
    }

    private int status(String path) throws Exception {
        var concrete = path.replace("{room}", "r1").replace("{number}", "1");
        var query =
                concrete.endsWith("/technique") ? readme.commands("curl").get(0).replaceAll(".*\\?|'$", "?") : "";
        var compared = concrete.endsWith("/compare") ? "?from=1&to=2" : query.replaceAll("\\?$", "");
        return send("curl '" + SHOWN_ADDRESS + concrete + compared + "'").statusCode();
    }

    /** Sends it; what a sign-in answers as the token of its writes stands for {@code $token} from then on. */
    private HttpResponse<String> send(String line) throws Exception {
        var answer = CurlLine.parse(line.replace(SHOWN_ADDRESS, address).replace("$token", token))
                .send(client);
        if (line.contains("/api/v1/session")) {
            token = JSON.readTree(answer.body()).get("csrfToken").asText();
        }
        return answer;
    }

    @Test
    void its_answer_is_the_real_one() throws Exception {
        var real = send(readme.commands("curl").get(0)).body();

        assertThat(readme.blocks("json")).hasSize(1);
        assertThat(withoutTheDay(readme.blocks("json").get(0))).isEqualTo(withoutTheDay(real));
    }

    @Test
    void a_wrong_number_in_its_answer_would_be_noticed() throws Exception {
        var real = send(readme.commands("curl").get(0)).body();
        var shown = readme.blocks("json").get(0);

        assertThat(withoutTheDay(shown.replace("\"timeMs\": 25", "\"timeMs\": 26")))
                .isNotEqualTo(withoutTheDay(real));
    }

    @Test
    void the_thickness_it_calls_outside_the_chart_is_refused_with_the_nearest_band() throws Exception {
        assertThat(readme.inBackticks()).contains("thicknessCm=17");
        var request = readme.commands("curl").get(0).replaceAll("thicknessCm=[\\d.]+", "thicknessCm=17");

        var answer = send(request);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("thickness-outside-chart", "[13,16]");
    }

    /** The answer but for what depends on the day on which the demo was made. */
    private static JsonNode withoutTheDay(String answer) throws JsonProcessingException {
        var tree = JSON.readTree(answer);
        var chart = (ObjectNode) tree.get("chart");
        for (var field : List.of("inForceFrom", "signedAt", "reviewDue")) {
            assertThat(chart.remove(field)).as(field).isNotNull();
        }
        return tree;
    }

    @Test
    void every_command_of_the_program_that_it_shows_is_one() {
        var commands = readme.commands("java");

        assertThat(commands).hasSizeGreaterThanOrEqualTo(5);
        assertThat(commands)
                .allSatisfy(line -> assertThatCode(() -> parse(line)).doesNotThrowAnyException());
    }

    @Test
    void a_misspelt_option_would_be_noticed() {
        assertThatThrownBy(() -> parse(JAR + " serve --confg config/site.yaml")).isInstanceOf(ParameterException.class);
        assertThatThrownBy(() -> parse(JAR + " sevre")).isInstanceOf(ParameterException.class);
    }

    private static void parse(String line) {
        assertThat(line).startsWith(JAR + " ");
        var words = CurlLine.words(line.substring(JAR.length()));
        Main.commandLine().parseArgs(words.toArray(String[]::new));
    }

    @Test
    void its_two_commands_are_those_of_the_build_and_of_the_developers_page() throws IOException {
        var commands = readme.commands("mvn").stream().distinct().toList();
        var run = Files.readAllLines(Path.of(".ci/run"));

        assertThat(commands).containsExactly("mvn -q compile exec:java", "mvn -B verify");
        assertThat(run.get(run.size() - 1)).isEqualTo("exec " + commands.get(1));
        assertThat(ShownPage.read("DEVELOPERS.md").commands("mvn")).containsAll(commands);
    }

    @Test
    void every_link_of_both_pages_leads_somewhere() throws IOException {
        for (var page : List.of("README.md", "DEVELOPERS.md")) {
            assertThat(ShownPage.read(page).links()).isNotEmpty().allSatisfy(link -> assertThat(Path.of(link))
                    .exists());
        }
    }
}
