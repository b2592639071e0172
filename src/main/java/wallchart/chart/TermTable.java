package wallchart.chart;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Reads a term table that ships with the program: comment lines, a header line, then plain comma-separated lines. */
final class TermTable {

    private TermTable() {}

    /**
     * The table's entries by their first column, in file order.
     *
     * @param header the line that must stand above the entries: if the file's columns move, nothing may be read
     */
    static <T> Map<String, T> read(String resource, String header, Function<String[], T> entry) {
        try (var stream = TermTable.class.getResourceAsStream(resource);
                var lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            var content = lines.lines().filter(line -> !line.startsWith("#")).toList();
            if (!content.get(0).equals(header)) {
                throw new IllegalStateException(resource + " has another header: " + content.get(0));
            }
            var entries = new LinkedHashMap<String, T>();
            int columns = header.split(",", -1).length;
            for (var line : content.subList(1, content.size())) {
                var cells = line.split(",", -1);
                if (cells.length != columns || entries.put(cells[0], entry.apply(cells)) != null) {
                    throw new IllegalStateException(resource + ": unusable or repeated line " + line);
                }
            }
            return Collections.unmodifiableMap(entries);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
