package wallchart.signoff;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import wallchart.chart.Adjustment;
import wallchart.chart.AdjustmentReader;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.chart.RowReader;
import wallchart.chart.RowReading;
import wallchart.store.CanonicalJson;

/** Rows and adjustments of a change as JSON texts, by the names of {@link RowFields}; what is written is read back equal. */
final class EditTexts {

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final TypeReference<Map<String, String>> FIELDS = new TypeReference<>() {};
    private static final TypeReference<List<Map<String, String>>> LIST = new TypeReference<>() {};

    private EditTexts() {}

    static String of(Row row) {
        return json(RowFields.of(row));
    }

    static String of(List<Adjustment> adjustments) {
        return json(adjustments.stream().map(RowFields::of).toList());
    }

    /** @throws IllegalStateException where the text is none that {@link #of} writes: the table was changed by hand */
    static Row row(String text) {
        return RowReader.read(read(text, FIELDS)) instanceof RowReading.Accepted accepted
                        && of(accepted.row()).equals(text)
                ? accepted.row()
                : unreadable(text);
    }

    /** @throws IllegalStateException as {@link #row} */
    static List<Adjustment> adjustments(String text) {
        var adjustments = read(text, LIST).stream()
                .map(fields -> AdjustmentReader.read(fields) instanceof AdjustmentReader.Reading.Accepted accepted
                        ? accepted.adjustment()
                        : EditTexts.<Adjustment>unreadable(text))
                .toList();
        return of(adjustments).equals(text) ? adjustments : unreadable(text);
    }

    /** The text that is the same for the same value, always: RFC 8785. */
    static CanonicalJson canonical(Object value) {
        return CanonicalJson.of(json(value));
    }

    private static String json(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static <T> T read(String text, TypeReference<T> type) {
        try {
            return MAPPER.readValue(text, type);
        } catch (JsonProcessingException notJson) {
            return unreadable(text);
        }
    }

    private static <T> T unreadable(String text) {
        throw new IllegalStateException("an edit of a change cannot be read: " + text + "; restore a backup");
    }
}
