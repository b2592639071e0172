package wallchart.web.request;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A JSON object of numbers and texts, each as it was written: 12.50 stays 12.50, and nothing is rounded on the way. A member that
 * is null counts as left out. A row may also be written as it is answered: {@code bandCm}, {@code kVWindow} and {@code aec} stand for
 * the fields they are made of.
 *
 * @param texts by the names of the members, in their order
 */
@JsonDeserialize(using = WrittenFields.Reading.class)
record WrittenFields(Map<String, String> texts) {

    WrittenFields {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** Takes the characters of numbers instead of their values, so that no huge exponent is ever worked out. */
    static final class Reading extends StdDeserializer<WrittenFields> {

        private static final long serialVersionUID = 1;

        /** Members that hold two fields each, in this order. */
        private static final Map<String, List<String>> PAIRS =
                Map.of("bandCm", List.of("bandFromCm", "bandToCm"), "kVWindow", List.of("kVFrom", "kVTo"));

        /** Members of {@code aec}, and the fields they are. */
        private static final Map<String, String> AEC =
                Map.of("chambers", "aecChambers", "density", "aecDensity", "backupMAs", "backupMAs");

        Reading() {
            super(WrittenFields.class);
        }

        @Override
        public WrittenFields deserialize(JsonParser json, DeserializationContext context) throws IOException {
            if (!json.isExpectedStartObjectToken()) {
                return (WrittenFields) context.handleUnexpectedToken(WrittenFields.class, json);
            }
            var texts = new LinkedHashMap<String, String>();
            for (var name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                var token = json.nextToken();
                if (token == JsonToken.START_ARRAY && PAIRS.containsKey(name)) {
                    pair(json, name, texts);
                } else if (token == JsonToken.START_OBJECT && name.equals("aec")) {
                    control(json, texts);
                } else {
                    scalar(json, name, name, texts);
                }
            }
            return new WrittenFields(texts);
        }

        private static void pair(JsonParser json, String name, Map<String, String> texts) throws IOException {
            for (var field : PAIRS.get(name)) {
                if (json.nextToken() == JsonToken.END_ARRAY) {
                    throw mismatch(json, name, "has one number: it needs two, from and to");
                }
                scalar(json, name, field, texts);
            }
            if (json.nextToken() != JsonToken.END_ARRAY) {
                throw mismatch(json, name, "has more than two numbers");
            }
        }

        private static void control(JsonParser json, Map<String, String> texts) throws IOException {
            for (var name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                var field = AEC.get(name);
                if (field == null) {
                    throw mismatch(json, "aec", "has a member that there is not: chambers, density and backupMAs");
                }
                if (json.nextToken() == JsonToken.START_ARRAY && name.equals("chambers")) {
                    put(json, name, field, String.join("+", chambers(json)), texts);
                } else {
                    scalar(json, name, field, texts);
                }
            }
        }

        private static List<String> chambers(JsonParser json) throws IOException {
            var chambers = new ArrayList<String>();
            while (json.nextToken() != JsonToken.END_ARRAY) {
                if (json.currentToken() != JsonToken.VALUE_STRING) {
                    throw mismatch(json, "aec", "names a chamber that is no text");
                }
                chambers.add(json.getText());
            }
            return chambers;
        }

        private static void scalar(JsonParser json, String member, String field, Map<String, String> texts)
                throws IOException {
            var token = json.currentToken();
            if (token == JsonToken.VALUE_STRING || token.isNumeric()) {
                put(json, member, field, json.getText(), texts);
            } else if (token != JsonToken.VALUE_NULL) {
                throw mismatch(json, member, "neither a number nor a text");
            }
        }

        private static void put(JsonParser json, String member, String field, String text, Map<String, String> texts)
                throws IOException {
            if (texts.putIfAbsent(field, text) != null) {
                throw mismatch(json, member, "stands twice, also as " + field);
            }
        }

        private static JsonMappingException mismatch(JsonParser json, String member, String what) {
            var mismatch = JsonMappingException.from(json, what);
            mismatch.prependPath(WrittenFields.class, member);
            return mismatch;
        }
    }
}
