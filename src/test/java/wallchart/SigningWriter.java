package wallchart;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * A radiographer and a lead who change one row of a room again and again: opened, edited, submitted and signed. Their row is nobody
 * else's, their room is.
 */
final class SigningWriter {

    /** One kilovolt to and fro at 62 kV is less than half a decibel: no physicist has to concur. */
    private static final int KV_UP_AND_DOWN = 2;

    private final PersonAtWork author;
    private final PersonAtWork lead;
    private final String room;
    private final String key;
    private final Map<String, String> fields;
    private int base;
    private int turn;

    SigningWriter(
            PersonAtWork author, PersonAtWork lead, String room, int base, Map.Entry<String, Map<String, String>> row) {
        this.author = author;
        this.lead = lead;
        this.room = room;
        this.base = base;
        this.key = row.getKey();
        this.fields = row.getValue();
    }

    /**
     * Signs one change after another and tells each as soon as it was acknowledged.
     *
     * @throws IOException as soon as the service does not answer any more
     */
    void signUntilCutOff(Consumer<Acknowledged> told) throws IOException {
        while (true) {
            var title = "Knee " + UUID.randomUUID();
            var submitted = submitted(title);
            var change = address(submitted);
            base = signed(change, submitted.etag()).path("signedVersion").asInt();
            tell(title, told);
        }
    }

    /** Looks at the impact and signs; looks again where another was signed in the room meanwhile. */
    private JsonNode signed(String change, String seen) throws IOException {
        while (true) {
            var reply = lead.send("POST", change + "/sign", seen, signature(change));
            if (!reply.body().path("code").asText().equals("impact-changed")) {
                return reply.expect(200);
            }
        }
    }

    private PersonAtWork.Reply submitted(String title) throws IOException {
        var opening = Map.of("title", title, "reason", "Knees of the last weeks", "baseVersion", base);
        var opened = author.send("POST", "/api/v1/charts/" + room + "/changes", "", opening);
        opened.expect(201);
        var edited = author.send("PUT", address(opened) + "/rows/" + key, opened.etag(), row(title));
        edited.expect(200);
        var submitted = author.send("POST", address(opened) + "/submit", edited.etag(), Map.of());
        submitted.expect(200);
        return submitted;
    }

    private static String address(PersonAtWork.Reply change) {
        return "/api/v1/changes/" + change.body().path("id").asText();
    }

    /** The row with another kV than before, and with notes that it never had. */
    private Map<String, String> row(String notes) {
        var row = new LinkedHashMap<>(fields);
        row.put("kV", String.valueOf(Integer.parseInt(fields.get("kV")) + turn++ % KV_UP_AND_DOWN));
        row.put("notes", notes);
        return row;
    }

    private Map<String, String> signature(String change) throws IOException {
        var impact = lead.get(change + "/impact").expect(200).path("digest").asText();
        return Map.of("password", lead.password(), "meaning", "approved for use", "impactDigest", impact);
    }

    /** The digest is asked for afterwards; whatever becomes of that, the signature was acknowledged. */
    private void tell(String title, Consumer<Acknowledged> told) throws IOException {
        var digest = "";
        try {
            digest = lead.get("/api/v1/charts/" + room + "/versions/" + base)
                    .expect(200)
                    .path("digest")
                    .asText();
        } finally {
            told.accept(new Acknowledged(room, base, title, digest));
        }
    }
}
