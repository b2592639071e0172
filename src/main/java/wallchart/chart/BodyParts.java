package wallchart.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The body parts a chart may name: the terms of DICOM that general radiography uses. */
public final class BodyParts {

    private record Words(String label, BodyRegion region) {}

    private static final Map<String, Words> WORDS = TermTable.read(
            "/chart/body-part-words.csv",
            "term,label,region",
            cells -> new Words(cells[1], BodyRegion.ofSlug(cells[2])));

    private static final Map<String, BodyPart> BY_TERM =
            TermTable.read("/chart/body-parts.csv", "term,sctCode,meaning", BodyParts::bodyPart);

    private BodyParts() {}

    private static BodyPart bodyPart(String[] cells) {
        var words = WORDS.get(cells[0]);
        return new BodyPart(cells[0], cells[1], cells[2], words.label(), words.region());
    }

    /** The body part of that term. */
    public static Optional<BodyPart> find(String term) {
        return Optional.ofNullable(BY_TERM.get(term));
    }

    /** All of them, in the order of the table: from the trunk outwards. */
    public static List<BodyPart> all() {
        return List.copyOf(BY_TERM.values());
    }
}
