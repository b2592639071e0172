package wallchart.chart;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wallchart.store.CanonicalJson;
import wallchart.store.PlainText;

/**
 * The digest that a version's signature stands for: SHA-256 over the canonical JSON (RFC 8785) of room, number, rows and
 * adjustments in their order.
 *
 * <p>A row is an object of its fields as {@link RowFields} names and writes them, numbers as decimal strings, empty fields left
 * out; so any language computes the same digest without knowing how this one keeps numbers.
 */
final class ContentDigest {

    private ContentDigest() {}

    /** {@code sha256:} and 64 hex digits. */
    static String of(String room, int number, ChartContent content) {
        return canonical(room, number, content).digest();
    }

    /**
     * The text that is digested.
     *
     * @throws IllegalArgumentException if a text of the content could be written in more than one way
     */
    static CanonicalJson canonical(String room, int number, ChartContent content) {
        return canonical(
                new VersionNumber(room, number),
                content.rows().stream().map(ContentDigest::written).toList(),
                content.adjustments().stream().map(ContentDigest::written).toList());
    }

    /** The same of rows and adjustments that are {@link #written} already: most of them stand in many versions. */
    static CanonicalJson canonical(VersionNumber version, List<String> rows, List<String> adjustments) {
        var head = CanonicalJson.of(
                        new TreeMap<>(Map.of("number", String.valueOf(version.number()), "room", version.room())))
                .text();
        return new CanonicalJson("{\"adjustments\":[" + String.join(",", adjustments) + "],"
                + head.substring(1, head.length() - 1) + ",\"rows\":[" + String.join(",", rows) + "]}");
    }

    static String written(Row row) {
        return written(RowFields.of(row));
    }

    static String written(Adjustment adjustment) {
        return written(RowFields.of(adjustment));
    }

    private static String written(Map<String, String> fields) {
        fields.forEach((name, text) -> PlainText.unencodable(text).ifPresent(problem -> {
            throw new IllegalArgumentException(name + " " + problem);
        }));
        var filled = new TreeMap<>(fields);
        filled.values().removeIf(String::isEmpty);
        return CanonicalJson.of(filled).text();
    }
}
