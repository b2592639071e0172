package wallchart.technique;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * A reference level the site has chosen for one radiograph. It is a 75th percentile over sites (ICRP Publication 135), not a
 * limit and not for one patient.
 *
 * @param bodyPart DICOM Body Part Examined term
 * @param projection projection slug
 * @param patientGroup patient group id
 * @param milliGy over 0
 * @param quantity which air kerma it is
 * @param year of the set it belongs to
 * @param source what people look up to check it
 */
public record ReferenceLevel(
        String bodyPart,
        String projection,
        String patientGroup,
        BigDecimal milliGy,
        Quantity quantity,
        int year,
        String source) {

    /** The two quantities in use; about a factor 1.35 apart, never compared with each other. */
    public enum Quantity {
        ENTRANCE_SURFACE_AIR_KERMA("entrance-surface-air-kerma", "entrance surface air kerma, with backscatter"),
        INCIDENT_AIR_KERMA("incident-air-kerma", "incident air kerma, without backscatter");

        private final String slug;
        private final String words;

        Quantity(String slug, String words) {
            this.slug = slug;
            this.words = words;
        }

        /** The word used in settings. */
        public String slug() {
            return slug;
        }

        /** The words used in answers. */
        public String words() {
            return words;
        }

        /** The quantity of that slug. */
        public static Optional<Quantity> find(String slug) {
            return Arrays.stream(values())
                    .filter(quantity -> quantity.slug.equals(slug))
                    .findFirst();
        }
    }

    public ReferenceLevel {
        if (milliGy.signum() <= 0) {
            throw new IllegalArgumentException(
                    "reference level is " + milliGy.toPlainString() + " mGy: it must be over 0");
        }
    }
}
