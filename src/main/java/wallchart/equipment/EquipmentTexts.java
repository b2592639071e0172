package wallchart.equipment;

import java.util.List;
import wallchart.store.PlainText;

/** Whether the names in what somebody enters about a room can be kept and printed. What was entered before this rule stays readable. */
final class EquipmentTexts {

    /** Names are headings of sheets and entries of lists; common practice, no source. */
    static final int LONGEST_NAME = 120;

    private EquipmentTexts() {}

    static void check(EquipmentDocument document, ReadingProblems problems) {
        name("/name", document.name(), problems);
        var receptors = document.receptors() == null ? List.<EquipmentDocument.ReceptorPart>of() : document.receptors();
        for (int i = 0; i < receptors.size(); i++) {
            if (receptors.get(i) != null) {
                name("/receptors/" + i + "/name", receptors.get(i).name(), problems);
            }
        }
    }

    private static void name(String field, String text, ReadingProblems problems) {
        if (text != null) {
            PlainText.problem(text, LONGEST_NAME).ifPresent(problem -> problems.add(field, problem));
        }
    }
}
