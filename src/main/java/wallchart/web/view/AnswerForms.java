package wallchart.web.view;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Many answers in little space. Whatever an answer says is kept, digit for digit; what answers have in common is written once: their
 * <em>form</em>, with {@code "#"} where a number stands and {@code "$"} where a text does, and each <em>text</em>. An answer is then a
 * list of numbers: which form, and what fills its places in order; a text by its place in the list of texts.
 *
 * <p>For one thread.
 */
public final class AnswerForms {

    private static final JsonFactory JSON = new JsonFactory();
    private static final String NUMBER = "\"#\"";
    private static final String TEXT = "\"$\"";

    private final Map<String, Integer> forms = new LinkedHashMap<>();
    private final Map<String, Integer> texts = new LinkedHashMap<>();

    /** The forms so far, in their order. */
    public List<RawValue> forms() {
        return forms.keySet().stream().map(RawValue::new).toList();
    }

    /** The texts so far, in their order. */
    public List<String> texts() {
        return List.copyOf(texts.keySet());
    }

    /**
     * One more answer.
     *
     * @param kind of the answer; stands in its form
     * @param leftOut members of the whole that are put together again from elsewhere
     * @return a list of numbers
     */
    public RawValue fill(String kind, byte[] json, Set<String> leftOut) {
        var form = new StringBuilder("{\"").append(kind).append("\":");
        var leaves = new StringBuilder();
        try (var parser = JSON.createParser(json)) {
            parser.nextToken();
            object(parser, leftOut, form, leaves);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new RawValue("[" + place(forms, form.append('}').toString()) + leaves + "]");
    }

    private void object(JsonParser parser, Set<String> leftOut, StringBuilder form, StringBuilder leaves)
            throws IOException {
        form.append('{');
        var between = "";
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            var name = parser.currentName();
            parser.nextToken();
            if (leftOut.contains(name)) {
                parser.skipChildren();
            } else {
                form.append(between).append('"').append(name).append("\":");
                value(parser, form, leaves);
                between = ",";
            }
        }
        form.append('}');
    }

    private void array(JsonParser parser, StringBuilder form, StringBuilder leaves) throws IOException {
        form.append('[');
        var between = "";
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            form.append(between);
            value(parser, form, leaves);
            between = ",";
        }
        form.append(']');
    }

    private void value(JsonParser parser, StringBuilder form, StringBuilder leaves) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, Set.of(), form, leaves);
            case START_ARRAY -> array(parser, form, leaves);
            case VALUE_STRING -> {
                form.append(TEXT);
                leaves.append(',').append(place(texts, parser.getText()));
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                form.append(NUMBER);
                leaves.append(',').append(parser.getText());
            }
            default -> form.append(parser.getText()); // true, false, null
        }
    }

    private static int place(Map<String, Integer> of, String what) {
        var known = of.putIfAbsent(what, of.size());
        return known == null ? of.size() - 1 : known;
    }
}
