package wallchart.chart;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wallchart.store.CanonicalJson;

/**
 * The digest that a version's signature stands for: SHA-256 over the canonical JSON (RFC 8785) of room, number, rows and
 * adjustments in their order.
 *
 * <p>A row is an object of its fields as {@link RowFields} names and writes them, numbers as decimal strings, empty fields left
 * out; so any language computes the same digest without knowing how this one keeps numbers.
 */
final class ContentDigest {

    private static final JsonMapper MAPPER = new JsonMapper();

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
        var json = Map.of(
                "room", room,
                "number", String.valueOf(number),
                "rows",
                        content.rows().stream()
                                .map(row -> written(RowFields.of(row)))
                                .toList(),
                "adjustments",
                        content.adjustments().stream()
                                .map(adjustment -> written(RowFields.of(adjustment)))
                                .toList());
        try {
            return CanonicalJson.of(MAPPER.writeValueAsString(json));
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static Map<String, String> written(Map<String, String> fields) {
        fields.forEach((name, text) -> Texts.problem(text, Integer.MAX_VALUE).ifPresent(problem -> {
            throw new IllegalArgumentException(name + " " + problem);
        }));
        return fields.entrySet().stream()
                .filter(field -> !field.getValue().isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, TreeMap::new));
    }
}
