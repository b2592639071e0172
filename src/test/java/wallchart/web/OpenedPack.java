package wallchart.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.GZIPInputStream;

/** A pack as somebody without this program reads it, from the words of the OpenAPI document alone. */
record OpenedPack(JsonNode header, String text, JsonNode content) {

    private static final ObjectMapper JSON = new ObjectMapper();

    static OpenedPack of(Response answer) {
        try {
            var sealed = JSON.readTree(answer.asString());
            var text = unpacked(decoded(sealed, "payload"));
            return new OpenedPack(JSON.readTree(decoded(sealed, "protected")), text, JSON.readTree(text));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static byte[] decoded(JsonNode sealed, String member) {
        return Base64.getUrlDecoder().decode(sealed.path(member).asText());
    }

    private static String unpacked(byte[] packed) throws IOException {
        try (var gzip = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return new String(gzip.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** When it was given out. */
    String issuedAt() {
        return header.path("issuedAt").asText();
    }

    /** An answer put together again. */
    JsonNode answer(JsonNode packed) {
        var leaves = packed.elements();
        return filled(content.path("forms").path(leaves.next().asInt()), leaves);
    }

    private JsonNode filled(JsonNode form, java.util.Iterator<JsonNode> leaves) {
        if (form.isTextual()) {
            return form.asText().equals("#")
                    ? leaves.next()
                    : content.path("texts").path(leaves.next().asInt());
        }
        if (form.isArray()) {
            var array = JSON.createArrayNode();
            form.forEach(part -> array.add(filled(part, leaves)));
            return array;
        }
        if (!form.isObject()) {
            return form;
        }
        var object = JSON.createObjectNode();
        form.properties().forEach(part -> object.set(part.getKey(), filled(part.getValue(), leaves)));
        return object;
    }
}
