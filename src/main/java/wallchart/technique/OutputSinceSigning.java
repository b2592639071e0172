package wallchart.technique;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wallchart.chart.Finding;
import wallchart.chart.RowKey;
import wallchart.quantity.Decimals;

/**
 * How the output of a room's tube stands now beside that at which a version of its chart was signed. One small step a year adds up:
 * what counts is the distance from what the signer knew, not from the measurement before.
 *
 * @param version number of the version
 * @param measuredThen day of the measurement in force when it was signed; absent where there was none
 * @param measuredNow day of the measurement in force now; absent where there is none
 * @param rows output now over then at the tube voltage of each row, in the order of the chart; only rows of which both are known
 * @param whole the same at the measured tube voltage where it moved furthest; absent where none is known in both
 */
public record OutputSinceSigning(
        int version,
        Optional<LocalDate> measuredThen,
        Optional<LocalDate> measuredNow,
        Map<RowKey, Double> rows,
        OptionalDouble whole) {

    private static final int MOST_NAMED = 5;

    /** Whether the output moved so far, at this ratio of now to then, that somebody has to look. */
    static boolean isNotable(double ratio) {
        return Math.abs(percent(ratio)) > EquipmentEffects.NOTABLE_PERCENT;
    }

    /** As it is shown, and judged. */
    private static double percent(double ratio) {
        return Math.round((ratio - 1) * 1000) / 10.0;
    }

    /** The rows at whose tube voltage it moved that far, in the order of the chart. */
    public List<RowKey> movedRows() {
        return rows.entrySet().stream()
                .filter(row -> isNotable(row.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** For whoever asks for a technique of that row, in short; empty where the output is about what it was. */
    public Optional<String> caution(RowKey row) {
        var own = rows.get(row);
        var ratio = own != null ? OptionalDouble.of(own) : whole;
        return ratio.stream()
                .filter(OutputSinceSigning::isNotable)
                .mapToObj(moved -> "output " + measured(measuredNow) + " is " + words(moved)
                        + " that at signing of version " + version + ": tell the lead radiographer")
                .findFirst();
    }

    /** For whoever reads the chart or a change of it; empty where the output is about what it was. */
    public Optional<Finding> finding() {
        var moved = movedRows();
        var furthest = furthest(moved);
        return furthest.stream()
                .filter(OutputSinceSigning::isNotable)
                .mapToObj(ratio -> Finding.caution("", "", sentence(moved, ratio)))
                .findFirst();
    }

    private OptionalDouble furthest(List<RowKey> moved) {
        var ofRows = moved.stream()
                .map(rows::get)
                .reduce((one, other) -> Math.abs(Math.log(other)) > Math.abs(Math.log(one)) ? other : one);
        return ofRows.map(OptionalDouble::of).orElse(whole);
    }

    private String sentence(List<RowKey> moved, double ratio) {
        return "the tube's output now is " + words(ratio) + " that at signing of version " + version + " (x "
                + Decimals.significant(ratio, 3) + "; then " + measured(measuredThen) + ", now " + measured(measuredNow)
                + "): " + about(moved)
                + "; small steps add up here, each was under the limit or confirmed: prove these rows, and propose a change";
    }

    private String about(List<RowKey> moved) {
        if (moved.isEmpty()) {
            return "at a measured tube voltage, though at that of no row by more than "
                    + (int) EquipmentEffects.NOTABLE_PERCENT + " %";
        }
        var named = moved.stream().limit(MOST_NAMED).map(RowKey::toString).collect(Collectors.joining(", "));
        int more = moved.size() - MOST_NAMED;
        return "by more than " + (int) EquipmentEffects.NOTABLE_PERCENT + " % for " + moved.size() + " of "
                + rows.size() + " rows, " + named + (more > 0 ? " and " + more + " more" : "");
    }

    private static String words(double ratio) {
        double percent = percent(ratio);
        return Decimals.plain(BigDecimal.valueOf(Math.abs(percent))) + " % " + (percent < 0 ? "under" : "over");
    }

    private static String measured(Optional<LocalDate> day) {
        return day.map(on -> "measured " + on).orElse("by the beam model, not measured,");
    }
}
