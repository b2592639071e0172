package wallchart.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The body parts a chart may name: the terms of DICOM that general radiography uses. */
public final class BodyParts {

    private static final Map<String, BodyPart> BY_TERM = TermTable.read(
            "/chart/body-parts.csv", "term,sctCode,meaning", cells -> new BodyPart(cells[0], cells[1], cells[2]));

    private BodyParts() {}

    /** The body part of that term. */
    public static Optional<BodyPart> find(String term) {
        return Optional.ofNullable(BY_TERM.get(term));
    }

    /** All of them, in the order of the table: from the trunk outwards. */
    public static List<BodyPart> all() {
        return List.copyOf(BY_TERM.values());
    }
}
