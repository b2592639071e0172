package wallchart.web.view;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.annotation.JacksonStdImpl;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.databind.util.RawValue;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import com.fasterxml.jackson.module.blackbird.BlackbirdModule;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import wallchart.quantity.Decimals;

/**
 * How this interface writes and reads JSON: what people set as plain decimals without trailing zeros, what physics computes to
 * six significant digits, instants in UTC; unknown and repeated members are refused.
 *
 * <p>A view declares computed numbers as {@code Double}: a primitive would be read by reflection each time.
 */
public final class Json {

    /** Digits of a computed number: finer than any console or meter, coarse enough to read. */
    private static final int COMPUTED_DIGITS = 6;

    private static final int DEEPEST = 20;

    /** More than a technique takes. */
    private static final int USUAL_BYTES = 4096;

    private static final JsonMapper MAPPER = mapper();
    private static final ObjectWriter WRITER = MAPPER.writer();

    private Json() {}

    /** The value as UTF-8 JSON. */
    public static byte[] bytes(Object value) {
        return written(value).toByteArray();
    }

    /** The value as UTF-8 JSON, to be sent on without another copy. */
    public static ByteArrayOutputStream written(Object value) {
        var bytes = new ByteArrayOutputStream(USUAL_BYTES);
        try {
            WRITER.writeValue(bytes, value);
        } catch (IOException impossible) {
            throw new IllegalStateException("a view cannot be written as JSON", impossible);
        }
        return bytes;
    }

    /** A stored object as it is; what somebody put in its place and is no object stands under {@code unreadable}. */
    static String objectOrWords(String stored) {
        try {
            return MAPPER.readTree(stored).isObject() ? stored : unreadable(stored);
        } catch (JsonProcessingException notJson) {
            return unreadable(stored);
        }
    }

    private static String unreadable(String stored) {
        return MAPPER.createObjectNode().put("unreadable", stored).toString();
    }

    /** A value that stands in many answers, as JSON that is copied into each. */
    static RawValue writtenOnce(Object value) {
        return new RawValue(new SerializedString(new String(bytes(value), StandardCharsets.UTF_8)));
    }

    /** Reads one type of request body, strictly. */
    public static ObjectReader readerFor(Class<?> type) {
        return MAPPER.readerFor(type);
    }

    private static JsonMapper mapper() {
        var numbers = new SimpleModule("numbers")
                .addSerializer(BigDecimal.class, new PlainDecimal())
                .addSerializer(Double.class, new Computed());
        var factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(
                        StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                .build();
        return JsonMapper.builder(factory)
                .addModule(new JavaTimeModule())
                .addModule(new BlackbirdModule())
                .addModule(numbers)
                .withCoercionConfig(
                        LogicalType.Textual, text -> text.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
                .withCoercionConfig(
                        LogicalType.Integer, whole -> whole.setCoercion(CoercionInputShape.String, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }

    /** Marked standard, so that the Blackbird module goes on reading such members without reflection. */
    @JacksonStdImpl
    private static final class PlainDecimal extends JsonSerializer<BigDecimal> {
        @Override
        public void serialize(BigDecimal value, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(Decimals.plain(value));
        }
    }

    @JacksonStdImpl
    private static final class Computed extends JsonSerializer<Double> {
        @Override
        public void serialize(Double value, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeNumber(Decimals.significant(value, COMPUTED_DIGITS));
        }
    }
}
