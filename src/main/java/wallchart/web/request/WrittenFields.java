package wallchart.web.request;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A JSON object of numbers and texts, each as it was written: 12.50 stays 12.50, and nothing is rounded on the way. A member that
 * is null counts as left out.
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
                if (token == JsonToken.VALUE_STRING || token.isNumeric()) {
                    texts.put(name, json.getText());
                } else if (token != JsonToken.VALUE_NULL) {
                    var mismatch = JsonMappingException.from(json, "neither a number nor a text");
                    mismatch.prependPath(WrittenFields.class, name);
                    throw mismatch;
                }
            }
            return new WrittenFields(texts);
        }
    }
}
