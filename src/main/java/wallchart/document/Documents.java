package wallchart.document;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Collectors;

/**
 * Reads the documents that people write, strictly, into records whose components may all be missing (null). Unknown keys, keys that
 * stand twice, values of the wrong type and numbers in another form than plain digits are refused with their place; nothing is
 * guessed. Stateless and thread-safe; never throws for what a document holds.
 */
public final class Documents {

    private static final int MOST_BYTES = 1_000_000;

    private Documents() {}

    /** What a YAML file holds. */
    public static <T> DocumentReading<T> yaml(Path file, Class<T> shape) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                return tooLarge(Files.size(file));
            }
            return yaml(Files.readAllBytes(file), shape);
        } catch (NoSuchFileException missing) {
            return unreadable("", "does not exist: check the path");
        } catch (IOException failed) {
            return unreadable("", "cannot be read: " + failed.getMessage());
        }
    }

    /** What the bytes of a YAML document hold. */
    public static <T> DocumentReading<T> yaml(byte[] bytes, Class<T> shape) {
        return decode(DocumentFormat.YAML, bytes, shape);
    }

    /** What the bytes of a JSON document hold. */
    public static <T> DocumentReading<T> json(byte[] bytes, Class<T> shape) {
        return decode(DocumentFormat.JSON, bytes, shape);
    }

    /** A record as JSON that {@link #json} reads back equal; components that are null are left out. */
    public static String toJson(Object document) {
        try {
            return DocumentFormat.JSON.writeValueAsString(document);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a document record cannot be written", impossible);
        }
    }

    private static <T> DocumentReading<T> decode(ObjectMapper format, byte[] bytes, Class<T> shape) {
        if (bytes.length > MOST_BYTES) {
            return tooLarge(bytes.length);
        }
        try {
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return parse(format, text, shape);
        } catch (CharacterCodingException notUtf8) {
            return unreadable("", "is not UTF-8: save it as UTF-8");
        }
    }

    private static <T> DocumentReading<T> parse(ObjectMapper format, String text, Class<T> shape) {
        try (var parser = format.createParser(text)) {
            return parse(format, parser, shape);
        } catch (IOException unreadable) {
            return unreadable("", "cannot be read: check the whole of it");
        }
    }

    private static <T> DocumentReading<T> parse(ObjectMapper format, JsonParser parser, Class<T> shape)
            throws IOException {
        try {
            var content = format.readValue(parser, shape);
            return content == null ? unreadable("", "is empty") : new DocumentReading.Written<>(content);
        } catch (JsonProcessingException refused) {
            return refused(parser, refused);
        }
    }

    private static <T> DocumentReading<T> refused(JsonParser parser, JsonProcessingException refused) {
        if (refused instanceof UnrecognizedPropertyException unknown) {
            return unreadable(
                    pointer(unknown),
                    "is no known key: write one of "
                            + unknown.getKnownPropertyIds().stream()
                                    .map(String::valueOf)
                                    .sorted()
                                    .collect(Collectors.joining(", ")));
        }
        if (refused instanceof DocumentFormat.UnreadableValue value) {
            return unreadable(pointer(value), value.getOriginalMessage());
        }
        if (refused instanceof MismatchedInputException mismatched) {
            return unreadable(
                    pointer(mismatched),
                    "is of another type than expected here: where one value is expected, write no list and no members, and the reverse");
        }
        return malformed(parser, refused);
    }

    private static <T> DocumentReading<T> malformed(JsonParser parser, JsonProcessingException refused) {
        var root = refused.getCause() instanceof JsonParseException cause ? cause : refused;
        if (root.getOriginalMessage().startsWith("Duplicate field")) {
            return unreadable(
                    parser.getParsingContext().pathAsPointer().toString(), "stands twice: keep one of the two");
        }
        var at = root.getLocation();
        return unreadable(
                "",
                "cannot be read" + (at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr())
                        + (parser.getCodec() == DocumentFormat.JSON
                                ? ": check commas, brackets and quotation marks there"
                                : ": check indentation, colons and quotation marks there"));
    }

    private static <T> DocumentReading<T> unreadable(String field, String message) {
        return new DocumentReading.Unreadable<>(field, message);
    }

    private static <T> DocumentReading<T> tooLarge(long bytes) {
        return unreadable("", "has " + bytes + " bytes: at most " + MOST_BYTES + " are read");
    }

    private static String pointer(JsonMappingException refused) {
        return refused.getPath().stream()
                .map(step -> "/" + (step.getFieldName() == null ? step.getIndex() : escaped(step.getFieldName())))
                .collect(Collectors.joining());
    }

    private static String escaped(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }
}
