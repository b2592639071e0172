package wallchart.intake;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.chart.Adjustment;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.equipment.Chamber;
import wallchart.quantity.Filtration;

class ChartCsvTest {

    private static final String HEADER = String.join(",", RowFields.NAMES) + "\n";
    private static final String GOOD =
            "KNEE,ap,adult,table-bucky,10,13,,mid-patella,63,10,,,,small,g10,100,dr1,18x24,lengthwise,,,0,apex of patella,still,\"none, site policy\",kv-per-cm,,,,,\n";

    private static ChartReading read(String lines) {
        return ChartCsv.readRows((HEADER + lines).getBytes(UTF_8));
    }

    private static String withCell(String field, String text) {
        var cells = new LinkedHashMap<>(RowFields.of(read(GOOD).content().rows().get(0)));
        cells.put(field, text);
        return line(cells);
    }

    private static String line(Map<String, String> cells) {
        return cells.values().stream()
                        .map(cell -> "\"" + cell.replace("\"", "\"\"") + "\"")
                        .collect(Collectors.joining(","))
                + "\n";
    }

    @Test
    void what_a_file_leaves_to_a_default_is_explicit_in_the_row() {
        var row = read(GOOD).content().rows().get(0);
        assertThat(row.key()).hasToString("KNEE/ap/adult/table-bucky/10-13");
        assertThat(row.referenceThickness()).hasToString("11.5 cm");
        assertThat(row.setting().thicknessMethod().rate())
                .hasValueSatisfying(rate -> assertThat(rate).isEqualByComparingTo("2.0"));
        assertThat(row.setting().addedFiltration().isNone()).isTrue();
    }

    @Test
    void every_field_written_out_is_read_back_as_it_was() {
        var rows = List.of(
                aRow().withAec(-1, "200", Chamber.LEFT, Chamber.RIGHT)
                        .with(Filtration.aluminium("1").and(Filtration.parse("0.1 mm Cu")))
                        .withTargetExposureIndex(320)
                        .withMethod("mas-per-cm", "4.5")
                        .withKVWindow("70", "81.5")
                        .withLongestTime("120")
                        .withReferenceThickness("20.25")
                        .withNotes("a \"quoted\", word")
                        .row(),
                aRow().withMethod("attenuation").withoutAngle().row(),
                aRow().withMethod("fixed").row());
        var lines = rows.stream().map(row -> line(RowFields.of(row))).collect(Collectors.joining());
        var reading = read(lines);
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.content().rows()).isEqualTo(rows);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    bandFromCm           | 1e1            | "1e1" is no number |
                    bandFromCm           | NaN            | "NaN" is no number |
                    bandToCm             | 9              | the upper end must lie over the lower |
                    bandToCm             | ''             | is empty |
                    kV                   | 1e308          | "1e308" is no number |
                    kV                   | 63,5           | "63,5" is no number |
                    kV                   | 1234567890.123 | at most 12 characters |
                    kV                   | 63.25          | at most 1 decimal place |
                    kV                   | -63            | cannot be negative |
                    kV                   | ٦٣             | is no number |
                    mAs                  | 0              | must be over 0 |
                    mAs                  | ''             | is empty |
                    aecDensity           | 1              | give mAs, or chambers, density and back-up | mAs
                    referenceThicknessCm | 13.5           | outside the band |
                    support              | bucky          | write tabletop, table-bucky, wall-bucky or mobile |
                    focalSpot            | fine           | write small or large |
                    orientation          | upright        | lengthwise or crosswise |
                    fieldCm              | 30x24          | shorter side first |
                    fieldCm              | 1e9x1e9        | write it as 24x30 |
                    addedFiltration      | copper         | write none, 0.1 mm Cu |
                    targetExposureIndex  | 400.5          | no whole number |
                    centralRayAngleDeg   | 91             | within -90 and 90 |
                    thicknessMethod      | double         | kv-per-cm, mas-per-cm, fixed or attenuation |
                    thicknessMethod      | fixed          | takes no rate | thicknessRate
                    thicknessRate        | 11             | at most 10 |
                    kVFrom               | 50             | is empty | kVTo
                    longestTimeMs        | 0              | over 0 |
                    grid                 | ''             | is empty |
                    """)
    void a_cell_that_cannot_be_read_is_named_by_line_and_column(
            String field, String text, String reason, String place) {
        var reading = read(GOOD + withCell(field, text) + GOOD);
        assertThat(reading.content().rows()).hasSize(2);
        assertThat(reading.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.isBlocking()).isTrue();
            assertThat(finding.row()).isEqualTo("line 3");
            assertThat(finding.field()).isEqualTo(place == null ? field : place);
            assertThat(finding.reason()).contains(reason);
        });
    }

    @Test
    void every_wrong_cell_of_a_line_is_told_at_once() {
        assertThat(read(GOOD.replace("63", "x").replace("lengthwise", "y")).findings())
                .extracting(Finding::field)
                .containsExactly("kV", "orientation");
    }

    @Test
    void lines_are_counted_as_an_editor_counts_them() {
        var twoLinesInOneCell = withCell("notes", "first\nsecond");
        var reading = read("\n" + twoLinesInOneCell + "\r\n" + withCell("kV", "x"));
        assertThat(reading.findings()).extracting(Finding::row).containsExactly("line 6");
    }

    @Test
    void a_line_with_too_few_cells_is_named_and_the_others_are_read() {
        var reading = read("KNEE,ap\n" + GOOD);
        assertThat(reading.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.row()).isEqualTo("line 2");
            assertThat(finding.reason()).contains("has 2 cells, the header has 31");
        });
        assertThat(reading.content().rows()).hasSize(1);
    }

    @Test
    void a_byte_order_mark_is_tolerated() {
        assertThat(ChartCsv.readRows(("\ufeff" + HEADER + GOOD).getBytes(UTF_8)).findings())
                .isEmpty();
    }

    @Test
    void another_encoding_is_refused_and_not_guessed() {
        var bytes = (HEADER + GOOD.replace("still", "Kn\u00f6chel")).getBytes(ISO_8859_1);
        assertThat(ChartCsv.readRows(bytes).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("is not UTF-8"));
    }

    @Test
    void another_header_is_refused() {
        for (var header : List.of("", "bodyPart", HEADER.replace("kV,mAs", "mAs,kV"))) {
            assertThat(ChartCsv.readRows(header.getBytes(UTF_8)).findings())
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.row()).isEqualTo("line 1"));
        }
    }

    @Test
    void a_quotation_mark_that_is_never_closed_is_a_finding() {
        assertThat(read(GOOD + "\"KNEE").findings()).singleElement().satisfies(finding -> assertThat(finding.reason())
                .contains("breaks off after line 2"));
    }

    @Test
    void a_file_that_is_too_large_is_not_read() {
        assertThat(ChartCsv.readRows(new byte[5_000_001]).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("5000001 bytes"));
    }

    @Test
    void more_lines_than_a_chart_can_have_are_refused() {
        assertThat(read("x\n".repeat(30_000)).findings()).hasSize(20_001).last().satisfies(finding -> assertThat(
                        finding.reason())
                .contains("more than 20000 lines"));
        assertThat(read(GOOD.repeat(20_001)).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("more than 20000 lines"));
    }

    @Test
    void what_looks_like_a_formula_is_text() {
        var reading = read(withCell("notes", "=HYPERLINK(\"x\")"));
        assertThat(reading.findings()).isEmpty();
        assertThat(notes(reading.content().rows().get(0))).isEqualTo("=HYPERLINK(\"x\")");
    }

    @Test
    void a_decomposed_letter_is_composed_at_reading() {
        assertThat(notes(read(withCell("notes", "Kno\u0308chel"))
                        .content()
                        .rows()
                        .get(0)))
                .isEqualTo("Kn\u00f6chel");
    }

    private static String notes(Row row) {
        return row.positioning().notes();
    }

    @Test
    void adjustments_are_read_with_exactly_one_effect_each() {
        var header = "name,label,addKv,timesMas,notes\n";
        var file = header + "cast,Adds 5 kV,5,,\nwet,Times 3,,3,\n";
        assertThat(ChartCsv.readAdjustments(file.getBytes(UTF_8)).content().adjustments())
                .containsExactly(addingKV("cast", "5"), timesMAs("wet", "3"));
        var wrong = header + "cast,Both,5,2,\nwet,None,,,\nA b,Name,-3,,\nzero,Nothing,0,,\nbig,Too much,,11,\n";
        assertThat(ChartCsv.readAdjustments(wrong.getBytes(UTF_8)).findings())
                .extracting(Finding::row, Finding::field)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("adjustments, line 2", "addKv"),
                        org.assertj.core.api.Assertions.tuple("adjustments, line 3", "addKv"),
                        org.assertj.core.api.Assertions.tuple("adjustments, line 4", "name"),
                        org.assertj.core.api.Assertions.tuple("adjustments, line 5", "addKv"),
                        org.assertj.core.api.Assertions.tuple("adjustments, line 6", "timesMas"));
    }

    @Test
    void a_chart_is_its_rows_and_its_adjustments() {
        var reading = ChartCsv.read(
                (HEADER + GOOD).getBytes(UTF_8), "name,label,addKv,timesMas,notes\ncast,Cast,5,,\n".getBytes(UTF_8));
        assertThat(reading.isComplete()).isTrue();
        assertThat(reading.content().rows()).hasSize(1);
        assertThat(reading.content().adjustments()).extracting(Adjustment::name).containsExactly("cast");
    }

    @Property(tries = 300)
    void whatever_bytes_come_reading_answers(@ForAll byte[] bytes) {
        assertThat(ChartCsv.readRows(bytes).findings()).isNotEmpty();
    }

    @Property(tries = 300)
    void whatever_stands_in_a_cell_reading_answers(@ForAll String text) {
        for (var field : List.of("bandToCm", "kV", "aecChambers", "fieldCm", "addedFiltration", "notes")) {
            assertThat(read(withCell(field, text))).isNotNull();
        }
    }
}
