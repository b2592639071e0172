package wallchart.equipment;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;

/** An equipment document as canonical JSON (RFC 8785), and its digest: equal documents have equal bytes. */
final class EquipmentEncoding {

    private EquipmentEncoding() {}

    static String canonical(EquipmentDocument document) {
        try {
            return new JsonCanonicalizer(EquipmentFormat.JSON.writeValueAsString(document)).getEncodedString();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    static EquipmentDocument document(String canonical) {
        try {
            return EquipmentFormat.JSON.readValue(canonical, EquipmentDocument.class);
        } catch (JsonProcessingException changed) {
            throw new UncheckedIOException("a stored equipment document can no longer be read", changed);
        }
    }

    static String digest(String canonical) {
        try {
            var hash = MessageDigest.getInstance("SHA-256").digest(canonical.getBytes(StandardCharsets.UTF_8));
            return "sha256:" + HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
