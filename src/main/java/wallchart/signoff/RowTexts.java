package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.chart.RowReader;
import wallchart.chart.RowReading;
import wallchart.chart.RowReading.Problem;

/** A row as its author wrote it; refuses also names that no field has, and terms that could not stand in a key. */
record RowTexts(Optional<Row> row, List<Problem> problems) {

    private static final Pattern TERM = Pattern.compile("[A-Za-z0-9_-]{1,32}");
    private static final List<String> TERMS = List.of("bodyPart", "projection", "patientGroup");

    static RowTexts read(Map<String, String> fields) {
        var problems = new ArrayList<>(unknown(fields, RowFields.NAMES, ""));
        var reading = RowReader.read(fields);
        if (reading instanceof RowReading.Refused refused) {
            problems.addAll(refused.problems());
            return new RowTexts(Optional.empty(), problems);
        }
        var row = ((RowReading.Accepted) reading).row();
        var written = RowFields.of(row);
        TERMS.stream()
                .filter(name -> !TERM.matcher(written.get(name)).matches())
                .forEach(name ->
                        problems.add(new Problem(name, "must be at most 32 letters, digits, - and _: see the list")));
        return problems.isEmpty() ? new RowTexts(Optional.of(row), problems) : new RowTexts(Optional.empty(), problems);
    }

    /** Names that mean nothing: left unread, their author would believe them kept. */
    static List<Problem> unknown(Map<String, String> fields, List<String> names, String place) {
        return fields.keySet().stream()
                .filter(name -> !names.contains(name))
                .map(name -> new Problem(place + name, "there is no such field: leave it out, or correct its name"))
                .toList();
    }
}
