package wallchart.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The top level is fixed; what else is needed has a place below it. */
class TopLevelTest {

    /** What belongs there, and what a build and a site at work leave there (both ignored by the repository). */
    private static final Set<String> ALLOWED = Set.of(
            "README.md",
            "DEVELOPERS.md",
            "pom.xml",
            "src",
            "db",
            "config",
            "demo-data",
            "docker-compose.yml",
            "target",
            "data");

    @Test
    void nothing_else_lies_at_the_top() throws IOException {
        assertThat(strangers(Path.of("."))).isEmpty();
    }

    @Test
    void a_stranger_is_noticed(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("README.md"), "");
        Files.writeString(folder.resolve(".gitignore"), "");
        Files.writeString(folder.resolve("notes"), "");

        assertThat(strangers(folder)).containsExactly("notes");
    }

    private static List<String> strangers(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !ALLOWED.contains(name))
                    .toList();
        }
    }
}
