package wallchart.chart;

import java.util.ArrayList;
import java.util.List;

/** Gathers what the checks find about one row. Not thread-safe; lives for one checking. */
final class RowFindings {

    private final Row row;
    private final List<Finding> found = new ArrayList<>();

    RowFindings(Row row) {
        this.row = row;
    }

    Row row() {
        return row;
    }

    RowSetting setting() {
        return row.setting();
    }

    List<Finding> found() {
        return found;
    }

    void blocking(String field, String reason) {
        found.add(Finding.blocking(row.key().toString(), field, reason));
    }

    void caution(String field, String reason) {
        found.add(Finding.caution(row.key().toString(), field, reason));
    }
}
