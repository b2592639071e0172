package wallchart.chart;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rule sets that say what a technique chart must contain; a site chooses which of them hold for it, because they differ.
 *
 * <p>Fields that every row has by its very type (bands in cm, SID, receptor and its size) are listed too: the list is the rule, not
 * what this program happens to leave open. Fields of the automatic exposure control are asked of AEC rows only. Grid type and
 * focal distance stand with the room's equipment; a row names the grid.
 */
public enum RequiredFields {
    /** Examination, size in cm, receptor, grid, SID; for AEC the cells, the kV and the density setting. */
    OREGON(
            "or-333-106-0015",
            "Oregon OAR 333-106-0015",
            false,
            "bodyPart",
            "projection",
            "bandFromCm",
            "bandToCm",
            "kV",
            "receptor",
            "fieldCm",
            "grid",
            "sidCm",
            "aecChambers",
            "aecDensity"),
    /** Examination, thickness and age, receptor type and size, grid, SID, type and placement of shielding. */
    KANSAS(
            "ks-28-35-242a",
            "Kansas K.A.R. 28-35-242a(a)(3)",
            true,
            "bodyPart",
            "projection",
            "patientGroup",
            "bandFromCm",
            "bandToCm",
            "kV",
            "receptor",
            "fieldCm",
            "grid",
            "sidCm",
            "shielding"),
    /** Examination, thickness (or age, for children), receptor type and size, SID, type and location of shielding. */
    VIRGINIA(
            "va-12vac5-481-1591",
            "Virginia 12VAC5-481-1591(A)(3)",
            false,
            "bodyPart",
            "projection",
            "bandFromCm",
            "bandToCm",
            "kV",
            "receptor",
            "fieldCm",
            "sidCm",
            "shielding");

    private final String slug;
    private final String citation;
    private final boolean asksForAge;
    private final List<String> fields;

    RequiredFields(String slug, String citation, boolean asksForAge, String... fields) {
        this.slug = slug;
        this.citation = citation;
        this.asksForAge = asksForAge;
        this.fields = List.of(fields);
    }

    /** The word a site's settings use. */
    public String slug() {
        return slug;
    }

    /** Where the rule is published. */
    public String citation() {
        return citation;
    }

    /** Whether techniques must be told apart by age as well as by thickness. */
    public boolean asksForAge() {
        return asksForAge;
    }

    /** The fields of the chart file that may not be empty. */
    public List<String> fields() {
        return fields;
    }

    /** The rule set of that slug. */
    public static Optional<RequiredFields> find(String slug) {
        return Arrays.stream(values()).filter(set -> set.slug.equals(slug)).findFirst();
    }
}
