package wallchart.chart;

import java.util.Locale;

/**
 * One result of checking a chart.
 *
 * @param severity how bad
 * @param row the row's key, or the place in a file where no row could be read, or empty for the chart as a whole
 * @param field the field as files name it, or empty
 * @param reason what, the value, the limit, the next step
 */
public record Finding(Severity severity, String row, String field, String reason) {

    /** How bad a finding is. */
    public enum Severity {
        /** The chart cannot be published. */
        BLOCKING,
        /** Somebody should look before signing. */
        CAUTION,
        /** Good to know. */
        NOTE;

        /** The word used in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static Finding blocking(String row, String field, String reason) {
        return new Finding(Severity.BLOCKING, row, field, reason);
    }

    public static Finding caution(String row, String field, String reason) {
        return new Finding(Severity.CAUTION, row, field, reason);
    }

    public static Finding note(String row, String field, String reason) {
        return new Finding(Severity.NOTE, row, field, reason);
    }

    public boolean isBlocking() {
        return severity == Severity.BLOCKING;
    }

    @Override
    public String toString() {
        var place = row.isEmpty() ? "chart" : row;
        return severity.slug() + ": " + place + (field.isEmpty() ? "" : " " + field) + ": " + reason;
    }
}
