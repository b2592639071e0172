package wallchart.intake;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * A decimal number in plain digits: at most nine before and nine after the point. An exponent is refused, because
 * {@code 1e999999999} is a short text and a very long number.
 */
final class PlainDecimal extends StdDeserializer<BigDecimal> {

    private static final long serialVersionUID = 1;
    private static final Pattern PLAIN = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

    PlainDecimal() {
        super(BigDecimal.class);
    }

    @Override
    public BigDecimal deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        var text = parser.getText();
        boolean number =
                parser.currentToken().isNumeric() && PLAIN.matcher(text).matches();
        return number
                ? new BigDecimal(text)
                : (BigDecimal) context.handleWeirdStringValue(
                        BigDecimal.class, text, "not a number in plain digits, such as 62.5");
    }
}
