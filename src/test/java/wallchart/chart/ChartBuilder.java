package wallchart.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Builds the content of a chart, or a version of it that looks published. */
public final class ChartBuilder {

    private final List<Row> rows = new ArrayList<>();
    private final List<Adjustment> adjustments = new ArrayList<>();

    /** Adds the row of {@link ChartFixtures#aRow()} for that band. */
    public ChartBuilder withBand(int fromCm, int toCm) {
        return with(ChartFixtures.aRow().withBand(fromCm, toCm));
    }

    public ChartBuilder with(RowBuilder row) {
        return with(row.row());
    }

    public ChartBuilder with(Row row) {
        rows.add(row);
        return this;
    }

    public ChartBuilder with(Adjustment adjustment) {
        adjustments.add(adjustment);
        return this;
    }

    public ChartContent content() {
        return new ChartContent(rows, adjustments);
    }

    /** As version 1 of room r1, in force since 2026-01-05, signed by an invented lead, never stored; its digest is none. */
    public ChartVersion version() {
        var from = Instant.parse("2026-01-05T07:00:00Z");
        var signature = new Signature(1, "A. Lead", "lead", from, "approved for use");
        var head = new VersionHead(
                "r1", 1, "sha256:0", "First chart", "made for a test", from, LocalDate.parse("2027-01-05"), signature);
        return new ChartVersion(head, content());
    }
}
