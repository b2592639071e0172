package wallchart.chart;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wallchart.equipment.Slugs;

/**
 * A group of patients with rows of their own: adults, or one of the site's paediatric groups.
 *
 * @param id slug that rows and queries use
 * @param label words for people, with the limits of the group
 * @param by what sorts a patient into it
 */
public record PatientGroup(String id, String label, Basis by) {

    /** The group that a query means when it names none. */
    public static final String ADULT = "adult";

    /** What sorts a patient into a group. */
    public enum Basis {
        AGE,
        WEIGHT,
        SIZE;

        /** The word used in files and answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The basis of that slug. */
        public static Optional<Basis> find(String slug) {
            return Arrays.stream(values())
                    .filter(basis -> basis.slug().equals(slug))
                    .findFirst();
        }
    }

    public PatientGroup {
        Slugs.require("patient group", id);
        if (label.isBlank()) {
            throw new IllegalArgumentException("patient group " + id + " has no label: write its limits in words");
        }
    }
}
