package wallchart.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether the bands of each examination follow one another: none twice, none overlapping, no gap between neighbours. */
final class BandChecks {

    private static final Comparator<Row> BY_BAND = Comparator.comparing(
                    (Row row) -> row.key().band().from())
            .thenComparing(row -> row.key().band().to());

    private BandChecks() {}

    static List<Finding> check(List<Row> rows) {
        var findings = new ArrayList<Finding>();
        if (rows.isEmpty()) {
            findings.add(Finding.blocking("", "", "the chart has no rows: add at least one"));
        }
        byExamination(rows).values().forEach(examination -> compare(examination, findings));
        return findings;
    }

    private static Map<ExaminationKey, List<Row>> byExamination(List<Row> rows) {
        var examinations = new LinkedHashMap<ExaminationKey, List<Row>>();
        for (var row : rows) {
            examinations
                    .computeIfAbsent(row.key().examination(), key -> new ArrayList<>())
                    .add(row);
        }
        return examinations;
    }

    /** Compares each band with the one that reaches furthest among those before it. */
    private static void compare(List<Row> examination, List<Finding> findings) {
        examination.sort(BY_BAND);
        var furthest = examination.get(0);
        for (var row : examination.subList(1, examination.size())) {
            compare(furthest, row, findings);
            if (row.key().band().to().compareTo(furthest.key().band().to()) > 0) {
                furthest = row;
            }
        }
    }

    private static void compare(Row before, Row row, List<Finding> findings) {
        var key = row.key().toString();
        var earlier = before.key().band();
        var band = row.key().band();
        if (band.equals(earlier)) {
            findings.add(
                    Finding.blocking(key, "bandFromCm", "stands more than once in the chart: keep one of the rows"));
        } else if (band.overlaps(earlier)) {
            findings.add(Finding.blocking(
                    key,
                    "bandFromCm",
                    "the band " + band + " cm overlaps " + earlier + " cm of the same examination: let one end where"
                            + " the other begins"));
        } else if (!band.from().equals(earlier.to())) {
            findings.add(Finding.caution(
                    key,
                    "bandFromCm",
                    "between " + earlier + " and " + band + " cm there is a gap: a thickness from " + earlier.to()
                            + " to " + band.from() + " gets no technique"));
        }
    }
}
