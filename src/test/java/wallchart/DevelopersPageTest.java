package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md names nothing that is not there: a file, a folder, a class, a migration. */
class DevelopersPageTest {

    private static final int NAMES_AT_LEAST = 40;

    @Test
    void every_file_and_class_it_names_exists() throws IOException {
        var page = ShownPage.read("DEVELOPERS.md");

        assertThat(names(page)).hasSizeGreaterThan(NAMES_AT_LEAST);
        assertThat(missing(page)).isEmpty();
    }

    @Test
    void a_name_that_is_gone_would_be_noticed() throws IOException {
        var page =
                new ShownPage("`TechniqueRules` reads `db/common/V0001__gone.sql`, see `TechniqueRule` in `src/gone`.");

        assertThat(missing(page)).containsExactly("db/common/V0001__gone.sql", "TechniqueRule", "src/gone");
    }

    private static List<String> names(ShownPage page) {
        return page.inBackticks().stream()
                .filter(word -> isFile(word) || isClass(word))
                .toList();
    }

    private static boolean isFile(String word) {
        return word.matches("[\\w.-]+(/[\\w.-]+)+/?") || word.matches("[\\w.-]+\\.(md|xml|yaml|yml|java|sql|csv)");
    }

    private static boolean isClass(String word) {
        return word.matches("@?[A-Z]\\w*[a-z]\\w*");
    }

    private static List<String> missing(ShownPage page) throws IOException {
        var sources = namesOfSources();
        return names(page).stream()
                .filter(word -> !Files.exists(Path.of(word)))
                .filter(word -> !sources.contains(word) && !sources.contains(word.replace("@", "") + ".java"))
                .toList();
    }

    private static Set<String> namesOfSources() throws IOException {
        try (var files = Files.walk(Path.of("src"))) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        }
    }
}
