package wallchart.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Reads the folders of migrations and tells what is out of order in them. */
final class MigrationFolders {

    private static final Pattern NAME = Pattern.compile("(V\\d{4})__[a-z0-9_]+\\.sql");
    /** A constraint that no {@code CONSTRAINT name} introduces; an index is not a constraint. */
    private static final Pattern CONSTRAINT = Pattern.compile(
            "(CONSTRAINT\\s+\\w+\\s+)?\\b(PRIMARY KEY|FOREIGN KEY|REFERENCES|CHECK\\s*\\(|UNIQUE)(?!\\s+INDEX)",
            Pattern.CASE_INSENSITIVE);

    private MigrationFolders() {}

    static List<String> faults(Path root) throws IOException {
        var faults = new ArrayList<String>();
        var common = numbers(root.resolve("common"), faults);
        var h2 = numbers(root.resolve("h2"), faults);
        var postgresql = numbers(root.resolve("postgresql"), faults);
        common.forEach(number -> {
            alsoIn(number, "h2", h2, faults);
            alsoIn(number, "postgresql", postgresql, faults);
        });
        lacking(h2, "h2", postgresql, common, "postgresql", faults);
        lacking(postgresql, "postgresql", h2, common, "h2", faults);
        return faults;
    }

    private static void alsoIn(String number, String dialect, TreeSet<String> numbers, List<String> faults) {
        if (numbers.contains(number)) {
            faults.add(number + " is in common and in " + dialect);
        }
    }

    private static void lacking(
            TreeSet<String> here,
            String dialect,
            TreeSet<String> there,
            TreeSet<String> common,
            String other,
            List<String> faults) {
        here.stream()
                .filter(number -> !there.contains(number) && !common.contains(number))
                .forEach(number -> faults.add(number + " is in " + dialect + " but not in " + other));
    }

    private static TreeSet<String> numbers(Path folder, List<String> faults) throws IOException {
        var numbers = new TreeSet<String>();
        for (var file : files(folder).entrySet()) {
            var name = NAME.matcher(file.getKey());
            if (!name.matches()) {
                faults.add(file.getKey() + " is not named V0000__what.sql");
            } else if (!numbers.add(name.group(1))) {
                faults.add(name.group(1) + " is twice in " + folder.getFileName());
            }
            nameless(file.getKey(), file.getValue(), faults);
        }
        return numbers;
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (var paths = Files.list(folder)) {
            for (var path : paths.toList()) {
                files.put(path.getFileName().toString(), Files.readString(path));
            }
        }
        return files;
    }

    private static void nameless(String file, String text, List<String> faults) {
        var found = CONSTRAINT.matcher(text.replaceAll("--[^\n]*", ""));
        while (found.find()) {
            var named = found.group(1) != null;
            var partOfForeignKey = found.group(2).equalsIgnoreCase("REFERENCES");
            if (!named && !partOfForeignKey) {
                faults.add(file + " has a " + found.group(2) + " without a name");
            }
        }
    }
}
