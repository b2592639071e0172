package wallchart.audit;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import wallchart.store.CanonicalJson;

/**
 * A signed statement of the ledger's head, kept outside the database: at that instant the ledger ended with this event.
 *
 * @param seq number of the event
 * @param hash of the event
 * @param at when it was signed
 * @param keyId first 16 hexadecimal digits of SHA-256 of the public key (X.509)
 * @param signature Ed25519, base64, of {@link #text()}
 */
public record Checkpoint(long seq, String hash, Instant at, String keyId, String signature) {

    private static final JsonMapper MAPPER = new JsonMapper();

    /** What is signed: canonical JSON of all but the signature. */
    public String text() {
        return CanonicalJson.of(members().toString()).text();
    }

    /** As it stands in its file. */
    String line() {
        return CanonicalJson.of(members().put("signature", signature).toString())
                .text();
    }

    private ObjectNode members() {
        return MAPPER.createObjectNode()
                .put("seq", seq)
                .put("hash", hash)
                .put("at", at.toString())
                .put("keyId", keyId);
    }

    /** @throws IllegalArgumentException if the line is not exactly what {@link #line()} writes */
    static Checkpoint ofLine(String line) {
        try {
            var json = MAPPER.readTree(line);
            var checkpoint = new Checkpoint(
                    json.path("seq").asLong(),
                    json.path("hash").asText(),
                    Instant.parse(json.path("at").asText()),
                    json.path("keyId").asText(),
                    json.path("signature").asText());
            if (checkpoint.line().equals(line)) {
                return checkpoint;
            }
        } catch (com.fasterxml.jackson.core.JsonProcessingException | java.time.DateTimeException unreadable) {
            throw new IllegalArgumentException("is no checkpoint", unreadable);
        }
        throw new IllegalArgumentException("is no checkpoint");
    }
}
