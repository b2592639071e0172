package wallchart.audit;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Base64.Encoder;

/**
 * What a room takes along, with a signature that anybody can check: a flattened JSON Web Signature (RFC 7515 section 7.2.2) by
 * Ed25519 (RFC 8037 section 3.1).
 *
 * @param payload what is signed, base64url
 * @param header which key signed what kind of thing, and when; base64url of JSON, signed too
 * @param signature base64url
 */
@JsonPropertyOrder({"protected", "signature", "payload"})
public record SealedPack(String payload, @JsonProperty("protected") String header, String signature) {

    static final Encoder BASE64URL = Base64.getUrlEncoder().withoutPadding();

    static SealedPack sign(SigningKey key, String header, byte[] payload) throws IOException {
        var head = BASE64URL.encodeToString(header.getBytes(StandardCharsets.UTF_8));
        var body = BASE64URL.encodeToString(payload);
        var signature = key.sign(signed(head, body));
        return new SealedPack(body, head, BASE64URL.encodeToString(signature));
    }

    boolean fits(SigningKey key) {
        return key.signed(signed(header, payload), Base64.getUrlDecoder().decode(signature));
    }

    /** RFC 7515 section 5.1, step 8. A checkpoint begins with a brace, which is no base64url: neither can pass for the other. */
    private static byte[] signed(String head, String body) {
        return (head + "." + body).getBytes(StandardCharsets.US_ASCII);
    }
}
