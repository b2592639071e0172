package wallchart.equipment;

import java.nio.charset.StandardCharsets;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.store.CanonicalJson;

/** An equipment document, or a part of one, as canonical JSON, and back. */
final class EquipmentEncoding {

    private EquipmentEncoding() {}

    static CanonicalJson canonical(Object document) {
        return CanonicalJson.of(Documents.toJson(document));
    }

    static EquipmentDocument document(String canonical) {
        var reading = Documents.json(canonical.getBytes(StandardCharsets.UTF_8), EquipmentDocument.class);
        if (reading instanceof DocumentReading.Written<EquipmentDocument> written) {
            return written.content();
        }
        throw new IllegalStateException("a stored equipment document can no longer be read: " + reading);
    }
}
