package wallchart;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import wallchart.equipment.EquipmentDocument.OutputPart;

/** The small files of a department folder, as people write them; anything may be missing (null). */
final class DepartmentDocument {

    private DepartmentDocument() {}

    /** {@code people.yaml}: the people of the demo; a site adds its own with {@code person add}. */
    record People(List<PersonPart> people) {}

    record PersonPart(String name, String printedName, String role) {}

    /** {@code <room>/chart.yaml}: the versions to publish, oldest first. */
    record Chart(List<VersionPart> versions) {}

    /**
     * One version.
     *
     * @param rows name of the CSV file with all rows
     * @param adjustments name of the CSV file with all named adjustments; may be missing for none
     * @param signedBy demo only: who signs
     * @param daysAgo demo only: days before today at which it was signed
     * @param reviewAfterDays demo only: days from signing to review
     */
    record VersionPart(
            String rows,
            String adjustments,
            String title,
            String reason,
            String signedBy,
            Integer daysAgo,
            Integer reviewAfterDays) {}

    /** {@code measurements.yaml}: demo only: what was measured later, through the desk. */
    record Measurements(List<MeasurementPart> measurements) {}

    /**
     * One measurement of a tube's output.
     *
     * @param by who enters it
     * @param daysAgo days before today at which it was entered; it was measured the day before
     * @param output without its day
     */
    record MeasurementPart(String room, String by, Integer daysAgo, String reason, OutputPart output) {}

    /** {@code changes.yaml}: demo only: what was done to the charts later, through the desk. */
    record Changes(List<ChangePart> changes) {}

    /** One change. */
    record ChangePart(
            String room, String title, String reason, String kind, List<RowPart> rows, List<StepPart> steps) {}

    /** A row by its key, and the fields that are to be other than they are. */
    record RowPart(String row, Map<String, String> set) {}

    /**
     * One step.
     *
     * @param act {@code open}, {@code submit}, {@code return}, {@code decline}, {@code concur} or {@code sign}
     * @param by who takes it
     * @param words why it is returned or declined, what the signature means
     * @param inForceInDays days from signing to coming into force
     * @param rows further edits before the step
     */
    record StepPart(
            @JsonProperty("do") String act,
            String by,
            Integer daysAgo,
            String words,
            Integer inForceInDays,
            List<RowPart> rows) {}
}
