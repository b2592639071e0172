package wallchart.technique;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wallchart.chart.ExaminationKey;

/** The site's reference levels by what they are for: at most one of a kerma and one of the kerma-area product for each. */
public final class ReferenceLevels {

    private final Map<String, ReferenceLevel> kermas;
    private final Map<String, ReferenceLevel> areaProducts;

    /** @throws IllegalStateException if an examination has two levels of a kerma, or two of the kerma-area product */
    public ReferenceLevels(List<ReferenceLevel> levels) {
        this.kermas = byExamination(levels, level -> !level.unit().isTimesArea());
        this.areaProducts = byExamination(levels, level -> level.unit().isTimesArea());
    }

    private static Map<String, ReferenceLevel> byExamination(
            List<ReferenceLevel> levels, Predicate<ReferenceLevel> wanted) {
        return levels.stream()
                .filter(wanted)
                .collect(Collectors.toUnmodifiableMap(
                        level -> key(level.bodyPart(), level.projection(), level.patientGroup()), Function.identity()));
    }

    /** Level of the entrance or of the incident air kerma: its quantity says which. */
    public Optional<ReferenceLevel> findKerma(ExaminationKey examination) {
        return find(kermas, examination);
    }

    /** Level of the kerma-area product. */
    public Optional<ReferenceLevel> findAreaProduct(ExaminationKey examination) {
        return find(areaProducts, examination);
    }

    /** Every technique asks, and most sites have few levels. */
    private static Optional<ReferenceLevel> find(Map<String, ReferenceLevel> levels, ExaminationKey examination) {
        return levels.isEmpty() ? Optional.empty() : Optional.ofNullable(levels.get(key(examination)));
    }

    private static String key(ExaminationKey examination) {
        return key(examination.bodyPart(), examination.projection(), examination.patientGroup());
    }

    private static String key(String bodyPart, String projection, String patientGroup) {
        return bodyPart + "/" + projection + "/" + patientGroup;
    }
}
