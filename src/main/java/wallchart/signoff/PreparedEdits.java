package wallchart.signoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Edits.AdjustmentsEdit;

/**
 * What a change prepared whole does to a version, by the rules of single edits: everything can be read, or nothing is taken. Lives
 * for one reading.
 */
final class PreparedEdits {

    /** What the column of a row keeps. */
    private static final int LONGEST_ROW = 65_000;

    private static final List<String> KEY =
            List.of("bodyPart", "projection", "patientGroup", "support", "bandFromCm", "bandToCm");

    private final ChartContent before;
    private final int version;
    private final Map<RowKey, Optional<RowEdit>> edits = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private Optional<AdjustmentsEdit> adjustments = Optional.empty();

    /** @param before what the version says that the change is based on */
    PreparedEdits(ChartContent before, int version) {
        this.before = before;
        this.version = version;
    }

    /** Takes up what is wanted; {@link #problems} says what cannot be. */
    PreparedEdits take(Preparation wanted) {
        int rows = wanted.rows().size() + wanted.withdrawn().size();
        if (rows > Edits.MOST_ROWS) {
            problems.add(new Problem(
                    "rows",
                    "a change edits at most " + Edits.MOST_ROWS + " rows, these are " + rows
                            + ": prepare one body part at a time"));
            return this;
        }
        for (int i = 0; i < wanted.rows().size(); i++) {
            put(wanted.rows().get(i), "rows/" + i); // first, so that new rows stand where the withdrawn ones stood
        }
        for (int i = 0; i < wanted.withdrawn().size(); i++) {
            withdraw(wanted.withdrawn().get(i), "withdrawn/" + i);
        }
        wanted.adjustments().ifPresent(this::adjust);
        return this;
    }

    List<Problem> problems() {
        return problems;
    }

    /** What differs from the version. */
    Edits edits() {
        return new Edits(edits.values().stream().flatMap(Optional::stream).toList(), adjustments);
    }

    private void withdraw(RowKey key, String place) {
        var row = before.findRow(key);
        if (row.isEmpty()) {
            problems.add(new Problem(place, "row " + key + " is not in version " + version + ": look at its rows"));
        } else {
            enter(key, row.map(gone -> new RowEdit(RowEdit.Kind.WITHDRAW, gone, version)), place);
        }
    }

    private void put(Map<String, String> fields, String place) {
        var reading = RowTexts.read(fields);
        reading.problems()
                .forEach(problem -> problems.add(new Problem(
                        place + "/" + problem.field(), "of row " + named(fields) + ": " + problem.message())));
        reading.row().ifPresent(row -> put(row, place));
    }

    private void put(Row row, String place) {
        if (EditTexts.of(row).length() > LONGEST_ROW) {
            problems.add(new Problem(place, "row " + row.key() + " is longer than is kept: shorten its texts"));
            return;
        }
        var now = before.findRow(row.key());
        var kind = now.isPresent() ? RowEdit.Kind.AMEND : RowEdit.Kind.ADD;
        boolean same = now.filter(row::equals).isPresent();
        enter(row.key(), same ? Optional.empty() : Optional.of(new RowEdit(kind, row, version)), place);
    }

    private void enter(RowKey key, Optional<RowEdit> edit, String place) {
        if (edits.putIfAbsent(key, edit) != null) {
            problems.add(new Problem(place, "row " + key + " stands here twice: once each"));
        }
    }

    private void adjust(List<Map<String, String>> texts) {
        var reading = AdjustmentTexts.read(texts);
        problems.addAll(reading.problems());
        if (!reading.adjustments().equals(before.adjustments())) {
            adjustments = Optional.of(new AdjustmentsEdit(reading.adjustments(), version));
        }
    }

    /** As far as it can be said: what cannot be read may be the key itself. */
    private static String named(Map<String, String> fields) {
        var texts = KEY.stream().map(name -> fields.getOrDefault(name, "")).toList();
        return Stream.concat(texts.stream().limit(4), Stream.of(texts.get(4) + "-" + texts.get(5)))
                .collect(Collectors.joining("/"));
    }
}
