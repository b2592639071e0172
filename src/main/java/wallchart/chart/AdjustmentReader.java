package wallchart.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the texts of a named adjustment, by the names of {@link RowFields#ADJUSTMENT_NAMES}, into an {@link Adjustment}, or says
 * what cannot be read. Stateless and thread-safe.
 */
public final class AdjustmentReader {

    private AdjustmentReader() {}

    /** What comes of it. */
    public sealed interface Reading {

        /** The texts make an adjustment. */
        record Accepted(Adjustment adjustment) implements Reading {}

        /** The texts make none. */
        record Refused(List<RowReading.Problem> problems) implements Reading {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Reads one adjustment; a field that is missing in the map counts as empty. */
    public static Reading read(Map<String, String> fields) {
        var texts = new FieldTexts(fields);
        var name = texts.required("name", text -> text);
        var label = texts.required("label", text -> text);
        var effect = effect(texts);
        if (texts.problems().isEmpty()) {
            var adjustment = texts.at(
                    "name",
                    () -> new Adjustment(
                            name.orElseThrow(), label.orElseThrow(), effect.orElseThrow(), texts.text("notes")));
            if (adjustment.isPresent()) {
                return new Reading.Accepted(adjustment.get());
            }
        }
        return new Reading.Refused(texts.problems());
    }

    private static Optional<Adjustment.Effect> effect(FieldTexts texts) {
        if (texts.isEmpty("addKv") == texts.isEmpty("timesMas")) {
            texts.problem("addKv", "give exactly one of addKv and timesMas: an adjustment never does both");
            return Optional.empty();
        }
        return texts.isEmpty("addKv")
                ? texts.required("timesMas", digits -> new Adjustment.MultiplyCurrentTime(FieldTexts.number(digits)))
                : texts.required("addKv", digits -> new Adjustment.AddKilovolts(FieldTexts.number(digits)));
    }
}
