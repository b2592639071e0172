package wallchart.web;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Row;
import wallchart.equipment.SupportKind;
import wallchart.quantity.PartThickness;
import wallchart.technique.Query;
import wallchart.web.view.PackView.Outside;
import wallchart.web.view.PackView.SupportAnswers;

/** What a room is told that asks beside its chart: between the bands, under the lowest, over the highest, at another support. */
final class PackRefusals {

    static final String THICKNESS = "{thickness}";
    static final String SUPPORT = "{support}";

    private final PackAnswers answers;
    private final Map<Examination, List<Row>> rows = new LinkedHashMap<>();

    /** What a support is chosen for. */
    private record Examination(String bodyPart, String projection, String patientGroup) {

        Query at(PartThickness thickness, Optional<SupportKind> support) {
            return new Query(
                    bodyPart,
                    projection,
                    patientGroup,
                    thickness,
                    support,
                    Optional.empty(),
                    Optional.empty(),
                    List.of());
        }

        @Override
        public String toString() {
            return bodyPart + "/" + projection + "/" + patientGroup;
        }
    }

    PackRefusals(PackAnswers answers, List<Row> chart) {
        this.answers = answers;
        chart.forEach(row -> rows.computeIfAbsent(of(row.key().examination()), any -> new ArrayList<>())
                .add(row));
    }

    private static Examination of(ExaminationKey key) {
        return new Examination(key.bodyPart(), key.projection(), key.patientGroup());
    }

    /** By examination and support, ascending. */
    Map<String, List<Outside>> outside() {
        var outside = new LinkedHashMap<String, List<Outside>>();
        rows.forEach((examination, own) -> {
            for (var support : supports(own)) {
                outside.put(examination + "/" + support.slug(), outside(examination, support, own));
            }
        });
        return outside;
    }

    /** The words change only where a band begins or ends, at this support or another. */
    private List<Outside> outside(Examination examination, SupportKind support, List<Row> own) {
        var pieces = new ArrayList<Outside>();
        var ends = List.copyOf(ends(own));
        for (int i = 0; i + 1 < ends.size(); i++) {
            var at = new PartThickness(ends.get(i));
            boolean charted = own.stream()
                    .anyMatch(row -> row.key().examination().support() == support
                            && row.key().band().holds(at));
            if (!charted) {
                var told = answers.ask(
                        examination.at(at, Optional.of(support)),
                        text -> blank(text, "holds " + at, "holds " + THICKNESS));
                add(pieces, new Outside(ends.get(i), ends.get(i + 1), told));
            }
        }
        return pieces;
    }

    private static void add(List<Outside> pieces, Outside next) {
        int last = pieces.size() - 1;
        if (last >= 0
                && pieces.get(last).toCm().equals(next.fromCm())
                && pieces.get(last).answer().equals(next.answer())) {
            pieces.set(last, new Outside(pieces.get(last).fromCm(), next.toCm(), next.answer()));
        } else {
            pieces.add(next);
        }
    }

    private static TreeSet<BigDecimal> ends(List<Row> own) {
        var ends = new TreeSet<>(List.of(PackThicknesses.LEAST_CM, PackThicknesses.BEYOND_CM));
        own.forEach(row -> {
            ends.add(row.key().band().from().centimetres());
            ends.add(row.key().band().to().centimetres());
        });
        return new TreeSet<>(ends.subSet(PackThicknesses.LEAST_CM, true, PackThicknesses.BEYOND_CM, true));
    }

    /** By examination. */
    Map<String, SupportAnswers> supports() {
        var told = new LinkedHashMap<String, SupportAnswers>();
        rows.forEach((examination, own) -> told.put(examination.toString(), supports(examination, own)));
        return told;
    }

    private SupportAnswers supports(Examination examination, List<Row> own) {
        var charted = supports(own);
        var at = PackThicknesses.askable(own.get(0).key().band().from());
        var other = EnumSet.complementOf(EnumSet.copyOf(charted)).stream().findFirst();
        return new SupportAnswers(
                charted.size() > 1 ? answers.ask(examination.at(at, Optional.empty())) : null,
                other.map(kind -> other(examination.at(at, Optional.of(kind)), kind))
                        .orElse(null));
    }

    private RawValue other(Query query, SupportKind kind) {
        return answers.ask(query, text -> blank(text, '"' + kind.slug() + '"', '"' + SUPPORT + '"'));
    }

    private static Set<SupportKind> supports(List<Row> own) {
        var supports = EnumSet.noneOf(SupportKind.class);
        own.forEach(row -> supports.add(row.key().examination().support()));
        return supports;
    }

    /** A refusal that does not say what was asked would be told of any other asked the same way. */
    private static String blank(String text, String said, String blank) {
        if (!text.contains(said)) {
            throw new IllegalStateException("a refusal does not name what was asked, " + said + ": " + text);
        }
        return text.replace(said, blank);
    }
}
