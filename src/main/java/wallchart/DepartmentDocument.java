package wallchart;

import java.util.List;

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
}
