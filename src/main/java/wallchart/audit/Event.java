package wallchart.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One entry of the ledger, as it is stored.
 *
 * @param seq 1, 2, 3 … without a gap
 * @param at when, to the microsecond
 * @param actor who, by the name they sign in with, or the program's own
 * @param role what they were then
 * @param action what was done
 * @param object what it was done to
 * @param room the room it concerns
 * @param reason why
 * @param details canonical JSON of an object
 * @param requestId of the request that asked for it
 * @param prev the hash of the event before; {@link #NONE_BEFORE} for the first
 * @param hash SHA-256 in lower-case hexadecimal of {@link LedgerEncoding#text}
 */
public record Event(
        long seq,
        Instant at,
        String actor,
        String role,
        String action,
        String object,
        Optional<String> room,
        String reason,
        String details,
        Optional<String> requestId,
        String prev,
        String hash) {

    /** What stands in the place of a hash before the first event. */
    public static final String NONE_BEFORE = "0".repeat(64);

    private static final JsonMapper MAPPER = new JsonMapper();

    /** The same with that hash. */
    Event withHash(String computed) {
        return new Event(seq, at, actor, role, action, object, room, reason, details, requestId, prev, computed);
    }

    /** The number at the end of what it was done to, such as 3 of {@code r1/version/3}; 0 where there is none. */
    public int objectNumber() {
        var number = object.substring(object.lastIndexOf('/') + 1);
        return number.matches("[1-9][0-9]{0,8}") ? Integer.parseInt(number) : 0;
    }

    /** One of the details as text; empty where the details do not have it. */
    public Optional<String> detail(String name) {
        try {
            return Optional.ofNullable(MAPPER.readTree(details).get(name)).map(JsonNode::asText);
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException(object + " has an event that is no JSON", notJson);
        }
    }

    /** A list among the details as texts; empty where the details have no such list. */
    public List<String> detailList(String name) {
        try {
            var texts = new ArrayList<String>();
            MAPPER.readTree(details).path(name).forEach(entry -> texts.add(entry.asText()));
            return List.copyOf(texts);
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException(object + " has an event that is no JSON", notJson);
        }
    }

    /**
     * What a stored record says otherwise than the details of this event; empty where both say the same.
     *
     * @param record by the names of the details
     */
    public Optional<String> findDifference(Map<String, ?> record) {
        try {
            var said = MAPPER.readTree(details);
            return record.entrySet().stream()
                    .filter(now -> !String.valueOf(now.getValue())
                            .equals(said.path(now.getKey()).asText()))
                    .map(now -> object + " has another " + now.getKey())
                    .sorted()
                    .findFirst();
        } catch (JsonProcessingException notJson) {
            return Optional.of(object + " has an event that is no JSON");
        }
    }
}
