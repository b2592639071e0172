package wallchart.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import wallchart.store.CanonicalJson;
import wallchart.store.Sha256;

/**
 * The bytes that an event's hash is taken of: the canonical JSON (RFC 8785) of all its members but the hash. A member that an
 * event does not have is {@code null}. Pure, thread-safe.
 */
final class LedgerEncoding {

    /** Integers beyond this are not the same number in every language (RFC 8785, I-JSON). */
    private static final long LARGEST = (1L << 53) - 1;

    private static final JsonMapper MAPPER = new JsonMapper();

    private LedgerEncoding() {}

    /** The text that is hashed. */
    static String text(Event event) {
        return CanonicalJson.of(members(event).toString()).text();
    }

    /** The same; empty where the details are no JSON, because somebody put them in the place of what was entered. */
    static Optional<String> findText(Event event) {
        try {
            return Optional.of(text(event));
        } catch (UncheckedIOException | IllegalArgumentException notJson) {
            return Optional.empty();
        }
    }

    /** The whole event as one line of an export: the hashed text with the hash as one more member. */
    static String line(Event event) {
        return CanonicalJson.of(members(event).put("hash", event.hash()).toString())
                .text();
    }

    /** 64 hexadecimal digits. */
    static String hash(Event event) {
        return Sha256.hex(text(event));
    }

    private static ObjectNode members(Event event) {
        var members = MAPPER.createObjectNode()
                .put("seq", event.seq())
                .put("at", event.at().toString())
                .put("actor", event.actor())
                .put("role", event.role())
                .put("action", event.action())
                .put("object", event.object())
                .put("room", event.room().orElse(null))
                .put("reason", event.reason())
                .put("requestId", event.requestId().orElse(null))
                .put("prev", event.prev());
        return members.set("details", parsed(event.details()));
    }

    private static JsonNode parsed(String details) {
        try {
            return MAPPER.readTree(details);
        } catch (JsonProcessingException notJson) {
            throw new UncheckedIOException(notJson);
        }
    }

    /**
     * The canonical JSON of an act's details.
     *
     * @throws IllegalArgumentException if a number among them is no integer, or too large for other languages
     */
    static String details(Map<String, ?> details) {
        JsonNode tree = MAPPER.valueToTree(details);
        requireExact(tree);
        return CanonicalJson.of(tree.toString()).text();
    }

    private static void requireExact(JsonNode node) {
        boolean tooLarge = node.isIntegralNumber()
                && (!node.canConvertToLong() || node.longValue() > LARGEST || node.longValue() < -LARGEST);
        if (node.isNumber() && !node.isIntegralNumber() || tooLarge) {
            throw new IllegalArgumentException(
                    "details hold the number " + node + ": write fractions and large numbers as decimal text");
        }
        node.forEach(LedgerEncoding::requireExact);
    }
}
