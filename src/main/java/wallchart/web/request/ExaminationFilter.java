package wallchart.web.request;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wallchart.chart.ExaminationKey;
import wallchart.equipment.SupportKind;

/**
 * Which examinations of a chart are asked for; what is absent is not looked at.
 *
 * @param bodyPart DICOM Body Part Examined term
 * @param projection projection slug
 * @param patientGroup patient group id
 * @param support where receptor and patient are
 */
public record ExaminationFilter(
        Optional<String> bodyPart,
        Optional<String> projection,
        Optional<String> patientGroup,
        Optional<SupportKind> support)
        implements Predicate<ExaminationKey> {

    private static final Set<String> NAMES = Set.of("bodyPart", "projection", "patientGroup", "support");

    /** @param text the query of the address, not decoded; null for none */
    public static ExaminationFilter read(String text) {
        var parameters = Parameters.of(text, NAMES, Set.of());
        var filter = new ExaminationFilter(
                parameters.find("bodyPart", Syntaxes.BODY_PART),
                parameters.find("projection", Syntaxes.SLUG),
                parameters.find("patientGroup", Syntaxes.SLUG),
                parameters.find("support", Syntaxes.SUPPORT));
        parameters.refuseMistakes();
        return filter;
    }

    @Override
    public boolean test(ExaminationKey key) {
        return isOrAbsent(bodyPart, key.bodyPart())
                && isOrAbsent(projection, key.projection())
                && isOrAbsent(patientGroup, key.patientGroup())
                && isOrAbsent(support, key.support());
    }

    private static <T> boolean isOrAbsent(Optional<T> wanted, T value) {
        return wanted.isEmpty() || wanted.get().equals(value);
    }
}
