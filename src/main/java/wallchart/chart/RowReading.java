package wallchart.chart;

import java.util.List;

/** What comes of reading the texts of one row: a row, or every reason why it is none. */
public sealed interface RowReading {

    /** The texts make a row; whether it may be published is for {@link ChartCheck} to say. */
    record Accepted(Row row) implements RowReading {}

    /** The texts make no row. */
    record Refused(List<Problem> problems) implements RowReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * One thing that cannot be read.
     *
     * @param field name of the field
     * @param message what, the value, the limit
     */
    record Problem(String field, String message) {}
}
