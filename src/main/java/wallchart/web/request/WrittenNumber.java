package wallchart.web.request;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;

/**
 * A JSON number as it was written, so that no huge exponent is ever worked out before its form is checked.
 *
 * @param digits its characters
 */
@JsonDeserialize(using = WrittenNumber.Reading.class)
record WrittenNumber(String digits) {

    /** The characters; null where the member is left out. */
    static String of(WrittenNumber number) {
        return number == null ? null : number.digits();
    }

    static final class Reading extends StdDeserializer<WrittenNumber> {

        private static final long serialVersionUID = 1;

        Reading() {
            super(WrittenNumber.class);
        }

        @Override
        public WrittenNumber deserialize(JsonParser json, DeserializationContext context) throws IOException {
            return json.currentToken().isNumeric()
                    ? new WrittenNumber(json.getText())
                    : (WrittenNumber) context.handleUnexpectedToken(WrittenNumber.class, json);
        }
    }
}
