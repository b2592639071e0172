package wallchart.intake;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.Adjustment;
import wallchart.chart.AdjustmentReader;
import wallchart.chart.ChartContent;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.chart.RowReader;
import wallchart.chart.RowReading;

/** Reads a chart from its comma-separated files. Never throws for what they hold. Stateless and thread-safe. */
public final class ChartCsv {

    private ChartCsv() {}

    /** A chart of rows and adjustments. */
    public static ChartReading read(byte[] rowsFile, byte[] adjustmentsFile) {
        var rows = readRows(rowsFile);
        var adjustments = readAdjustments(adjustmentsFile);
        var findings = new ArrayList<>(rows.findings());
        findings.addAll(adjustments.findings());
        return new ChartReading(
                new ChartContent(rows.content().rows(), adjustments.content().adjustments()), findings);
    }

    /** The rows only. */
    public static ChartReading readRows(byte[] file) {
        var table = CsvTable.read("the chart file", file, RowFields.NAMES);
        var rows = new ArrayList<Row>();
        var findings = new ArrayList<>(table.findings());
        for (var line : table.lines()) {
            var reading = RowReader.read(line.cells());
            if (reading instanceof RowReading.Accepted accepted) {
                rows.add(accepted.row());
            } else if (reading instanceof RowReading.Refused refused) {
                addTo(findings, line.place(), refused.problems());
            }
        }
        return new ChartReading(new ChartContent(rows, List.of()), findings);
    }

    /** The named adjustments only. */
    public static ChartReading readAdjustments(byte[] file) {
        var table = CsvTable.read("the adjustments file", file, RowFields.ADJUSTMENT_NAMES);
        var adjustments = new ArrayList<Adjustment>();
        var findings = new ArrayList<>(table.findings());
        for (var line : table.lines()) {
            var reading = AdjustmentReader.read(line.cells());
            if (reading instanceof AdjustmentReader.Reading.Accepted accepted) {
                adjustments.add(accepted.adjustment());
            } else if (reading instanceof AdjustmentReader.Reading.Refused refused) {
                addTo(findings, "adjustments, " + line.place(), refused.problems());
            }
        }
        return new ChartReading(new ChartContent(List.of(), adjustments), findings);
    }

    private static void addTo(List<Finding> findings, String place, List<RowReading.Problem> problems) {
        problems.forEach(problem -> findings.add(Finding.blocking(place, problem.field(), problem.message())));
    }
}
