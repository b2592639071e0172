package wallchart.equipment;

import java.util.List;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.equipment.EquipmentReading.Problem;

/** Reads a room as people write it in a YAML file. Stateless and thread-safe; never throws for what a file holds. */
public final class EquipmentFile {

    private EquipmentFile() {}

    /** The room that a YAML file describes. */
    public static EquipmentReading read(byte[] yaml) {
        var reading = Documents.yaml(yaml, EquipmentDocument.class);
        if (reading instanceof DocumentReading.Unreadable<EquipmentDocument> unreadable) {
            return new EquipmentReading.Refused(List.of(new Problem(unreadable.field(), unreadable.message())));
        }
        return EquipmentReader.read(((DocumentReading.Written<EquipmentDocument>) reading).content());
    }
}
