package wallchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.ParameterException;

/** The container form as far as it can be held without a container engine: its files fit one another and this program. */
class ContainerTest {

    private static final String DATA = "/var/lib/wallchart";

    private final JsonNode service =
            new YAMLMapper().readTree(Path.of("docker-compose.yml").toFile()).at("/services/wallchart");
    private final List<String> dockerfile = Files.readAllLines(Path.of(
            service.at("/build/context").asText(),
            service.at("/build/dockerfile").asText()));

    @TempDir
    private Path folder;

    ContainerTest() throws IOException {}

    @Test
    void its_command_is_one_of_the_program() throws IOException {
        var command = strings(service.get("command"));
        var standard = strings(new YAMLMapper().readTree(instruction("CMD")));

        assertThat(command).isEqualTo(standard);
        Main.commandLine().parseArgs(command.toArray(String[]::new));
        assertThatThrownBy(() -> Main.commandLine().parseArgs("serve", "--configuration", command.get(2)))
                .isInstanceOf(ParameterException.class);
    }

    @Test
    void it_runs_the_jar_that_the_build_makes() throws IOException {
        var start = strings(new YAMLMapper().readTree(instruction("ENTRYPOINT")));

        assertThat(instruction("COPY")).contains("target/wallchart.jar " + start.get(start.size() - 1));
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<finalName>wallchart</finalName>");
        assertThat(Files.readAllLines(Path.of("src/main/docker/Dockerfile.dockerignore")))
                .endsWith("*", "!target/wallchart.jar");
    }

    @Test
    void the_settings_it_mounts_are_read_and_keep_their_data_on_the_volume() {
        var mounts = strings(service.get("volumes"));
        var file = mounts.get(1).split(":")[0];

        var settings = SettingsFile.read(Path.of(file));

        assertThat(mounts).containsExactly("data:" + DATA, file + ":/etc/wallchart/site.yaml:ro");
        assertThat(strings(service.get("command"))).contains("/etc/wallchart/site.yaml");
        assertThat(settings.database().url()).startsWith("jdbc:h2:file:" + DATA + "/");
        assertThat(settings.database().passwordFile().toString()).startsWith(DATA + "/");
        assertThat(strings(service.get("ports")))
                .containsExactly("127.0.0.1:7070:" + settings.server().port());
    }

    @Test
    void it_runs_as_nobody_special_and_writes_to_its_volume_only() {
        assertThat(service.get("user").asText()).isEqualTo(instruction("USER")).matches("[1-9]\\d+:[1-9]\\d+");
        assertThat(service.get("read_only").asBoolean()).isTrue();
        assertThat(strings(service.get("cap_drop"))).containsExactly("ALL");
        assertThat(instruction("VOLUME")).isEqualTo(DATA);
    }

    /** The very check, on the port of a running demo instead of the container's. */
    @Test
    void its_health_check_tells_a_ready_service_from_none() throws IOException {
        var check = strings(service.at("/healthcheck/test"));
        assertThat(check.get(0)).isEqualTo("CMD");
        var demo = new DemoDepartment(Path.of("demo-data"), folder, 0, false).start(Clock.systemUTC());
        int port = demo.port();
        try {
            assertThat(Program.run(folder, "", onPort(check, port)).exitCode()).isZero();
            assertThat(Program.run(folder, "", onPort(check, port, "/api/v1/health/no"))
                            .exitCode())
                    .isNotZero();
        } finally {
            demo.close();
        }
        assertThat(Program.run(folder, "", onPort(check, port)).exitCode()).isNotZero();
    }

    private static List<String> onPort(List<String> check, int port) {
        return onPort(check, port, "/api/v1/health/ready");
    }

    private static List<String> onPort(List<String> check, int port, String path) {
        return check.stream()
                .skip(1)
                .map(word ->
                        word.replace("$$", "$").replace("/7070", "/" + port).replace("/api/v1/health/ready", path))
                .toList();
    }

    private String instruction(String name) {
        return dockerfile.stream()
                .filter(line -> line.startsWith(name + " "))
                .map(line -> line.substring(name.length() + 1))
                .reduce((one, other) -> {
                    throw new AssertionError(name + " stands twice");
                })
                .orElseThrow();
    }

    private static List<String> strings(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
