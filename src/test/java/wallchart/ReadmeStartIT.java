package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's first command on a copy of what is checked in, and nothing that an earlier build left behind. */
class ReadmeStartIT {

    private static final String SHOWN = "mvn -q compile exec:java";
    private static final String COLOURS = "\u001B\\[[;\\d]*m"; // of Maven, even where nobody sees them
    private static final Duration COMPILING = Duration.ofMinutes(8);

    @TempDir
    private Path folder;

    @Test
    void the_demo_starts_from_a_clean_copy_and_answers() throws Exception {
        assertThat(ShownPage.read("README.md").commands("mvn")).contains(SHOWN);
        var project = Files.createDirectories(folder.resolve("project"));
        copyWhatIsCheckedIn(project);
        assertThat(project.resolve("target")).doesNotExist();

        try (var demo = Program.start(project, "", command())) {
            demo.await("Stop with Ctrl\\+C", COMPILING);
            var answer = CurlLine.parse(demo.await("curl .*")).send(HttpClient.newHttpClient());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body()).contains("\"room\":\"r1\"");
            assertThat(demo.terminate().err().replaceAll(COLOURS, "")).isBlank();
        }
    }

    /** As shown, but on a free port, with the libraries that this build has fetched already. */
    private List<String> command() {
        var command = new ArrayList<>(List.of(SHOWN.split(" ")));
        command.add("-Dexec.args=demo --port 0 --dir " + folder.resolve("demo"));
        var repository = System.getProperty("localRepository"); // set by the plugin that runs this test
        if (repository != null) {
            command.add("-Dmaven.repo.local=" + repository);
        }
        return command;
    }

    private void copyWhatIsCheckedIn(Path project) throws IOException {
        var files = checkedIn();
        assertThat(files).contains("README.md", "pom.xml", "src/main/java/wallchart/Main.java");
        for (var file : files) {
            var copy = project.resolve(file);
            Files.createDirectories(copy.getParent());
            Files.copy(Path.of(file), copy);
        }
    }

    /** What git knows; where there is no git, as in an unpacked archive, everything that no build has made. */
    private List<String> checkedIn() throws IOException {
        var git = gitFiles();
        if (!git.isEmpty()) {
            return git.stream().filter(file -> Files.exists(Path.of(file))).toList();
        }
        try (Stream<Path> files = Files.walk(Path.of(""))) {
            return files.filter(Files::isRegularFile)
                    .map(Path::toString)
                    .filter(file -> !file.startsWith("target/") && !file.startsWith(".git/"))
                    .toList();
        }
    }

    private List<String> gitFiles() {
        var command = List.of("git", "ls-files", "--cached", "--others", "--exclude-standard");
        try {
            var listed = Program.run(Path.of("").toAbsolutePath(), "", command);
            return listed.exitCode() == 0 ? listed.out().lines().toList() : List.of();
        } catch (IOException missing) {
            return List.of();
        }
    }
}
