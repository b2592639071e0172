package wallchart.equipment;

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
import java.util.List;
import java.util.stream.Collectors;
import wallchart.equipment.EquipmentReading.Problem;

/**
 * Reads equipment as people write it in a file (YAML) or send it (JSON). Unknown keys, keys that stand twice, values of the wrong
 * type and numbers in another form than plain digits are refused with their field; nothing is guessed.
 *
 * <p>Stateless and thread-safe. Never throws for what a file holds.
 */
public final class EquipmentFile {

    private static final int MOST_BYTES = 1_000_000;

    private EquipmentFile() {}

    /** What a file holds: a document that may still describe an impossible room, or none. */
    public sealed interface Content {

        /** A document, to be read by {@link EquipmentReader} or installed by {@link Rooms}. */
        record Written(EquipmentDocument document) implements Content {}

        /** No document. */
        record Unreadable(List<Problem> problems) implements Content {
            public Unreadable {
                problems = List.copyOf(problems);
            }
        }
    }

    /** The room that a YAML file describes. */
    public static EquipmentReading read(byte[] yaml) {
        return room(document(yaml));
    }

    /** The document in a YAML file. */
    public static Content document(byte[] yaml) {
        return content(EquipmentFormat.YAML, yaml);
    }

    /** The document in a JSON body. */
    public static Content documentFromJson(byte[] json) {
        return content(EquipmentFormat.JSON, json);
    }

    private static EquipmentReading room(Content content) {
        return content instanceof Content.Written written
                ? EquipmentReader.read(written.document())
                : new EquipmentReading.Refused(((Content.Unreadable) content).problems());
    }

    private static Content content(ObjectMapper format, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return unreadable("", "has " + bytes.length + " bytes: at most " + MOST_BYTES + " are read");
        }
        try {
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return parse(format, text);
        } catch (CharacterCodingException notUtf8) {
            return unreadable("", "is not UTF-8: save it as UTF-8");
        }
    }

    private static Content parse(ObjectMapper format, String text) {
        try (var parser = format.createParser(text)) {
            return parse(format, parser);
        } catch (IOException unreadable) {
            return unreadable("", "cannot be read: write it as in the example");
        }
    }

    private static Content parse(ObjectMapper format, JsonParser parser) throws IOException {
        try {
            var document = format.readValue(parser, EquipmentDocument.class);
            return document == null
                    ? unreadable("", "is empty: write the equipment of one room")
                    : new Content.Written(document);
        } catch (JsonProcessingException refused) {
            return refused(parser, refused);
        }
    }

    private static Content refused(JsonParser parser, JsonProcessingException refused) {
        if (refused instanceof UnrecognizedPropertyException unknown) {
            return unreadable(
                    pointer(unknown),
                    "is no known key: write one of "
                            + unknown.getKnownPropertyIds().stream()
                                    .map(String::valueOf)
                                    .sorted()
                                    .collect(Collectors.joining(", ")));
        }
        if (refused instanceof EquipmentFormat.UnreadableValue value) {
            return unreadable(pointer(value), value.getOriginalMessage());
        }
        if (refused instanceof MismatchedInputException mismatched) {
            return unreadable(pointer(mismatched), "is of another type than expected here: write it as in the example");
        }
        return malformed(parser, refused);
    }

    private static Content malformed(JsonParser parser, JsonProcessingException refused) {
        var root = refused.getCause() instanceof JsonParseException cause ? cause : refused;
        if (root.getOriginalMessage().startsWith("Duplicate field")) {
            return unreadable(
                    parser.getParsingContext().pathAsPointer().toString(), "stands twice: keep one of the two");
        }
        var at = root.getLocation();
        return unreadable(
                "",
                "cannot be read" + (at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr())
                        + ": check indentation, colons and quotation marks there");
    }

    private static Content unreadable(String field, String message) {
        return new Content.Unreadable(List.of(new Problem(field, message)));
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
