package wallchart.equipment;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;

/** An equipment document as canonical JSON (RFC 8785), and its digest: equal documents have equal bytes. */
final class EquipmentEncoding {

    private EquipmentEncoding() {}

    static String canonical(EquipmentDocument document) {
        try {
            return new JsonCanonicalizer(Documents.toJson(document)).getEncodedString();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    static EquipmentDocument document(String canonical) {
        var reading = Documents.json(canonical.getBytes(StandardCharsets.UTF_8), EquipmentDocument.class);
        if (reading instanceof DocumentReading.Written<EquipmentDocument> written) {
            return written.content();
        }
        throw new IllegalStateException("a stored equipment document can no longer be read: " + reading);
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
