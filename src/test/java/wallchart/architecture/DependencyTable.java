package wallchart.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The dependency table of DEVELOPERS.md: for each package, in the order of the table, the packages it may use.
 *
 * @param mayUse by package name
 */
record DependencyTable(Map<String, Set<String>> mayUse) {

    private static final Pattern TABLE =
            Pattern.compile("<!-- dependencies -->\\s*```\\n(.*?)```\\s*<!-- /dependencies -->", Pattern.DOTALL);

    static DependencyTable ofDevelopersPage() throws IOException {
        return parse(Files.readString(Path.of("DEVELOPERS.md")));
    }

    static DependencyTable parse(String page) {
        var matcher = TABLE.matcher(page);
        if (!matcher.find()) {
            throw new IllegalStateException("DEVELOPERS.md has no dependency table between its two marks");
        }
        var table = new LinkedHashMap<String, Set<String>>();
        for (var line : matcher.group(1).lines().toList()) {
            var words = line.strip().split("\\s+");
            var allowed = Arrays.stream(words).skip(1).collect(Collectors.toUnmodifiableSet());
            if (!table.keySet().containsAll(allowed)) {
                throw new IllegalStateException(
                        "\"" + line.strip() + "\": a package may use only packages of rows above it");
            }
            table.put(words[0], allowed);
        }
        return new DependencyTable(table);
    }
}
