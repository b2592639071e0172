package wallchart.print;

import java.util.Map;
import java.util.TreeMap;
import wallchart.audit.Act;

/** The events of printed sheets: everything that the register says, or the ledger's check could not tell a changed register. */
final class SheetEvents {

    static final String PRINTED = "sheet-printed";
    static final String TAKEN_DOWN = "sheet-taken-down";

    private SheetEvents() {}

    static String object(String number) {
        return "sheet/" + number;
    }

    static Act printed(PrintedSheet sheet) {
        var details = new TreeMap<String, Object>(Map.of(
                "version", sheet.version(),
                "digest", sheet.digest(),
                "equipment", sheet.equipment(),
                "paper", sheet.paper().slug(),
                "printedAt", sheet.printedAt().toString(),
                "printedName", sheet.printedName()));
        sheet.selection().patientGroup().ifPresent(group -> details.put("patientGroup", group));
        sheet.selection().region().ifPresent(region -> details.put("region", region.slug()));
        return Act.inRoom(sheet.room(), PRINTED, object(sheet.number().text()), "", details);
    }

    static Act takenDown(PrintedSheet sheet) {
        return Act.inRoom(
                sheet.room(), TAKEN_DOWN, object(sheet.number().text()), "", Map.of("version", sheet.version()));
    }
}
