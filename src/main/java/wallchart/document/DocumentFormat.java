package wallchart.document;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.MapperBuilder;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * How values are written in the documents that people write, in YAML and in JSON: texts are texts, numbers plain digits, days ISO.
 *
 * <p>A name that is not known or stands twice is refused; no type can be named in a document, and a YAML document may be neither
 * large nor deep nor refer to itself.
 */
final class DocumentFormat {

    static final ObjectMapper YAML = strict(YAMLMapper.builder(
            YAMLFactory.builder().loaderOptions(narrowLimits()).build()));
    static final ObjectMapper JSON = strict(JsonMapper.builder());

    private static final int MOST_CHARACTERS = 1_000_000;
    private static final int DEEPEST_NESTING = 20;
    private static final int LONGEST_SHOWN = 40;

    private static final int LONGEST_NUMBER = 12;
    /** Six decimals at most: below that, canonical JSON would write an exponent. */
    private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]{1,6})?");

    private DocumentFormat() {}

    private static LoaderOptions narrowLimits() {
        var limits = new LoaderOptions();
        limits.setMaxAliasesForCollections(0);
        limits.setNestingDepthLimit(DEEPEST_NESTING);
        limits.setCodePointLimit(MOST_CHARACTERS);
        return limits;
    }

    private static ObjectMapper strict(MapperBuilder<?, ?> mapper) {
        var values = new SimpleModule("written values")
                .addDeserializer(String.class, new Text())
                .addDeserializer(BigDecimal.class, new Number())
                .addDeserializer(Integer.class, new Whole())
                .addDeserializer(Boolean.class, new YesOrNo())
                .addDeserializer(LocalDate.class, new Day())
                .addSerializer(LocalDate.class, new DayOut());
        return mapper.addModule(values)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .defaultPropertyInclusion(
                        JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
                .build();
    }

    /** A value that cannot be taken, with words for people. */
    static final class UnreadableValue extends JsonMappingException {
        private static final long serialVersionUID = 1;

        UnreadableValue(JsonParser parser, String expected) throws IOException {
            super(parser, "is " + shown(parser) + ", " + expected);
        }

        private static String shown(JsonParser parser) throws IOException {
            if (!parser.currentToken().isScalarValue()) {
                return parser.hasToken(JsonToken.START_ARRAY) ? "a list" : "a mapping";
            }
            var text = parser.getText();
            return "\"" + printable(text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text)
                    + "\"";
        }

        /** With a question mark for what no answer and no log should repeat. */
        private static String printable(String text) {
            return text.codePoints()
                    .map(c -> Character.isISOControl(c) || isHalf(c) ? '?' : c)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    private static BigDecimal number(JsonParser parser) throws IOException {
        var text = parser.currentToken().isNumeric() ? parser.getText() : "";
        if (text.length() > LONGEST_NUMBER || !NUMBER.matcher(text).matches()) {
            throw new UnreadableValue(
                    parser,
                    "no number: write plain digits without quotation marks, with a decimal point, at most "
                            + LONGEST_NUMBER + " characters, at most 6 behind the point");
        }
        return new BigDecimal(text);
    }

    private static String text(JsonParser parser, String expected) throws IOException {
        if (!parser.hasToken(JsonToken.VALUE_STRING)) {
            throw new UnreadableValue(parser, expected);
        }
        if (parser.getText().codePoints().anyMatch(DocumentFormat::isHalf)) {
            throw new UnreadableValue(parser, "which holds half a character: type it anew");
        }
        return parser.getText();
    }

    /** No file, database or digest keeps it. */
    private static boolean isHalf(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE;
    }

    private static final class Text extends StdScalarDeserializer<String> {
        private static final long serialVersionUID = 1;

        Text() {
            super(String.class);
        }

        @Override
        public String deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return text(parser, "no text: write words, in quotation marks where they look like a number");
        }
    }

    private static final class Number extends StdScalarDeserializer<BigDecimal> {
        private static final long serialVersionUID = 1;

        Number() {
            super(BigDecimal.class);
        }

        @Override
        public BigDecimal deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return number(parser);
        }
    }

    private static final class Whole extends StdScalarDeserializer<Integer> {
        private static final long serialVersionUID = 1;

        Whole() {
            super(Integer.class);
        }

        @Override
        public Integer deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            try {
                return number(parser).intValueExact();
            } catch (ArithmeticException fraction) {
                throw new UnreadableValue(parser, "no whole number");
            }
        }
    }

    private static final class YesOrNo extends StdScalarDeserializer<Boolean> {
        private static final long serialVersionUID = 1;

        YesOrNo() {
            super(Boolean.class);
        }

        @Override
        public Boolean deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            if (!parser.currentToken().isBoolean()) {
                throw new UnreadableValue(parser, "neither true nor false: write one of them");
            }
            return parser.getBooleanValue();
        }
    }

    private static final class Day extends StdScalarDeserializer<LocalDate> {
        private static final long serialVersionUID = 1;

        Day() {
            super(LocalDate.class);
        }

        @Override
        public LocalDate deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            var expected = "no day: write it as 2026-09-14";
            try {
                return LocalDate.parse(text(parser, expected));
            } catch (DateTimeException impossible) {
                throw new UnreadableValue(parser, expected);
            }
        }
    }

    private static final class DayOut extends StdScalarSerializer<LocalDate> {
        private static final long serialVersionUID = 1;

        DayOut() {
            super(LocalDate.class);
        }

        @Override
        public void serialize(LocalDate day, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(day.toString());
        }
    }
}
