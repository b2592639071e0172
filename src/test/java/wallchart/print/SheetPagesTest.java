package wallchart.print;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.print.SheetFixtures.sheet;
import static wallchart.print.SheetFixtures.with;
import static wallchart.print.SheetFixtures.written;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.DemoRoom;
import wallchart.chart.BodyRegion;
import wallchart.chart.ChartContent;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.RoomRevision;
import wallchart.print.ParsedSheet.Piece;
import wallchart.quantity.LengthUnit;

/** Where things stand on paper, as another library reads it back. */
class SheetPagesTest {

    static Stream<Arguments> everyRoomOnEveryPaper() {
        return DemoRoom.all().stream()
                .flatMap(room -> Arrays.stream(PaperSize.values()).map(paper -> Arguments.of(room, paper)));
    }

    private static ParsedSheet parsed(DemoRoom room, PaperSize paper) {
        return ParsedSheet.of(written(sheet(room, LengthUnit.CENTIMETRE), paper));
    }

    private static ParsedSheet parsed(LengthUnit unit, RowBuilder... rows) {
        return ParsedSheet.of(written(made(unit, rows), PaperSize.A4));
    }

    private static Sheet made(LengthUnit unit, RowBuilder... rows) {
        var content = new ChartContent(Stream.of(rows).map(RowBuilder::row).toList(), List.of());
        return sheet(EquipmentFixtures.aRoom().room(), content, unit, Selection.WHOLE);
    }

    @ParameterizedTest
    @MethodSource("everyRoomOnEveryPaper")
    void every_page_is_whole(DemoRoom room, PaperSize paper) {
        assertThat(faults(parsed(room, paper))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("everyRoomOnEveryPaper")
    void every_row_stands_on_the_sheet_once(DemoRoom room, PaperSize paper) {
        var rows = ReadRow.of(parsed(room, paper));
        assertThat(rows).hasSameSizeAs(room.versions().get(1).content().rows());
        assertThat(rows.stream().map(row -> row.section() + row.examination() + row.thickness()))
                .doesNotHaveDuplicates();
    }

    /** What hangs beside a console: the rows of a region for one group of patients, as paper that one can take in. */
    @ParameterizedTest
    @MethodSource("everyRoomOnEveryPaper")
    void one_region_of_one_group_takes_few_pages(DemoRoom room, PaperSize paper) {
        var content = room.versions().get(1).content();
        for (var region : BodyRegion.values()) {
            for (var group : SheetFixtures.GROUPS) {
                var part = new Selection(Optional.of(group.id()), Optional.of(region));
                long rows = content.rows().stream().filter(part::takes).count();
                var sheet = sheet(room.room(), content, LengthUnit.CENTIMETRE, part);
                assertThat(LaidSheet.of(sheet, paper).pages().size())
                        .as(rows + " rows of " + region + ", " + group.label())
                        .isLessThanOrEqualTo(rows <= 3 ? 1 : rows <= 20 ? 2 : 5);
            }
        }
    }

    @Test
    void what_is_set_by_aec_says_density_and_back_up_on_one_line() {
        var bands = ReadRow.of(parsed(DemoRoom.all().get(0), PaperSize.LETTER)).stream()
                .filter(row -> row.exposure().startsWith("AEC"))
                .toList();
        assertThat(bands).isNotEmpty();
        var lines = parsed(DemoRoom.all().get(0), PaperSize.LETTER).pieces().stream()
                .map(Piece::words)
                .filter(words -> words.startsWith("density "));
        assertThat(lines).allMatch(words -> words.endsWith(" mAs"));
    }

    /** What a printer, a wall and an arm's length ask of every page, whatever stands on it. */
    private static List<String> faults(ParsedSheet sheet) {
        var faults = new ArrayList<String>();
        for (int page = 1; page <= sheet.pages(); page++) {
            var words = sheet.words(page);
            for (var wanted : List.of(
                    "Page " + page + " of " + sheet.pages(),
                    "Room ",
                    "Holds for room ",
                    "Version 7, in force since 2026-03-01 08:00 UTC",
                    "Signed 2026-03-01 08:00 UTC by A. Lead",
                    "sha256:0123456789abcdef…",
                    "Equipment revision 3",
                    "Review due 2027-02-02",
                    "Checkpoint: event 41, hash fedcba9876543210…, key",
                    "Sheet CDFG-HJKM-NPQR, printed 2026-03-02 08:00 UTC by A. Reader",
                    SheetFixtures.ADDRESS,
                    "Supports, never replaces, your judgement")) {
                if (!words.contains(wanted)) {
                    faults.add("page " + page + " lacks " + wanted);
                }
            }
            for (var piece : sheet.pieces(page)) {
                faults.addAll(faults(sheet, piece));
            }
            faults.addAll(collisions(sheet.pieces(page)));
        }
        return faults;
    }

    private static List<String> faults(ParsedSheet sheet, Piece piece) {
        var faults = new ArrayList<String>();
        if (piece.size() < Style.SMALLEST) {
            faults.add(piece + " is too small");
        }
        boolean inside = piece.x() >= PageFrame.MARGIN
                && piece.right() <= sheet.width(piece.page()) - PageFrame.MARGIN + 0.5
                && piece.y() - piece.size() >= PageFrame.MARGIN - 12
                && piece.y() + piece.size() / 4 <= sheet.height(piece.page()) - PageFrame.MARGIN + 1;
        if (!inside) {
            faults.add(piece + " leaves the page");
        }
        return faults;
    }

    /** Letters over letters: what a cell that is too narrow looks like. */
    private static List<String> collisions(List<Piece> pieces) {
        var faults = new ArrayList<String>();
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                var one = pieces.get(i);
                var other = pieces.get(j);
                boolean beside = one.right() <= other.x() + 0.1 || other.right() <= one.x() + 0.1;
                double apart = Math.abs(one.y() - other.y());
                if (!beside && apart < Math.min(one.size(), other.size()) * 0.75) {
                    faults.add(one + " stands on " + other);
                }
            }
        }
        return faults;
    }

    @Test
    void letters_that_are_too_small_would_be_noticed() {
        var piece = new Piece(1, 100, 100, 10, 8.5, false, "mAs");
        assertThat(faults(parsed(LengthUnit.CENTIMETRE, aRow()), piece)).hasSize(1);
    }

    @Test
    void letters_over_letters_would_be_noticed() {
        var one = new Piece(1, 100, 100, 50, 9, false, "mAs");
        assertThat(collisions(List.of(one, new Piece(1, 140, 101, 50, 9, false, "kV"))))
                .hasSize(1);
    }

    @Test
    void letters_that_leave_the_paper_would_be_noticed() {
        var piece = new Piece(1, 800, 100, 60, 9, false, "mAs");
        assertThat(faults(parsed(LengthUnit.CENTIMETRE, aRow()), piece)).hasSize(1);
    }

    /** 16 minutes of arc at 60 cm: the least height of letters in ISO 9241-303, from memory; a capital of Liberation Sans is 0.69 em. */
    @Test
    void what_is_set_is_large_enough_for_an_arms_length() {
        double millimetres = 600 * Math.tan(Math.toRadians(16 / 60.0));
        assertThat(Style.SET.size() * 0.69 * 25.4 / 72).isGreaterThanOrEqualTo(millimetres);
        assertThat(Style.SMALLEST_SET * 0.69 * 25.4 / 72).isGreaterThanOrEqualTo(millimetres * 0.99);
        var sizes = ParsedSheet.of(written(made(LengthUnit.CENTIMETRE, aRow()), PaperSize.A4)).pieces().stream()
                .filter(piece -> List.of("18–24", "75", "25 mAs").contains(piece.words()))
                .map(Piece::size);
        assertThat(sizes).hasSize(3).allSatisfy(size -> assertThat(size).isGreaterThanOrEqualTo(Style.SMALLEST_SET));
    }

    @ParameterizedTest
    @MethodSource("everyRoomOnEveryPaper")
    void the_heads_of_region_group_and_columns_stand_above_the_rows_of_every_page(DemoRoom room, PaperSize paper) {
        var sheet = parsed(room, paper);
        for (var row : ReadRow.of(sheet)) {
            assertThat(row.section()).as("above " + row).contains(" – ");
            assertThat(sheet.words(row.page())).contains("Examination", "mAs or AEC", "Holds at,", "SID, cm");
        }
    }

    @Test
    void children_are_told_from_adults_without_colour() {
        var rows = ReadRow.of(parsed(DemoRoom.all().get(0), PaperSize.A4));
        assertThat(rows).anyMatch(row -> row.section().startsWith("CHILDREN: "));
        assertThat(rows).allSatisfy(row -> assertThat(row.section().startsWith("CHILDREN: "))
                .isEqualTo(!row.section().contains("– Adult")));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void the_code_on_every_page_leads_to_the_sheets_own_page(int page) throws NotFoundException {
        var image = ParsedSheet.of(written(sheet(DemoRoom.all().get(2), LengthUnit.CENTIMETRE), PaperSize.LETTER))
                .grey(page, 150);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        var bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
        var codes = new QRCodeMultiReader().decodeMultiple(bitmap);
        assertThat(codes).singleElement().satisfies(code -> assertThat(code.getText())
                .isEqualTo(SheetFixtures.ADDRESS));
    }

    /** Behind a proxy whose address nobody told the service: no code is better than one that leads nowhere, or elsewhere. */
    @Test
    void where_nobody_knows_what_phones_reach_there_is_no_code_and_the_sheet_says_so() {
        var whole = made(LengthUnit.CENTIMETRE, aRow());
        var known = whole.head();
        var facts = new SheetHead(
                        SheetFixtures.site(LengthUnit.CENTIMETRE),
                        SheetFixtures.version("r1", new ChartContent(List.of(aRow().row()), List.of()))
                                .head(),
                        new RoomRevision(
                                3,
                                SheetFixtures.DIGEST,
                                SheetFixtures.NOW,
                                "physicist",
                                EquipmentFixtures.aRoom().room()),
                        Selection.WHOLE,
                        new Printing(
                                SheetFixtures.NUMBER,
                                Optional.empty(),
                                SheetFixtures.NOW,
                                "A. Reader",
                                Optional.empty(),
                                false))
                .head();
        var laid = LaidSheet.of(new Sheet(facts, whole.sections(), whole.adjustments(), whole.closing()), PaperSize.A4);
        assertThat(known.address()).isPresent();
        assertThat(laid.pages().stream().flatMap(List::stream)).noneMatch(mark -> mark instanceof Mark.Code);
        assertThat(ParsedSheet.of(SheetWriter.write(laid, SheetFixtures.NOW)).words(1))
                .contains("It has no code to scan", "site.address", "Sheet CDFG-HJKM-NPQR");
    }

    @Test
    void an_inch_site_reads_inches_and_nothing_else() {
        var sheet = parsed(LengthUnit.INCH, aRow().withBand(18, 24));
        var row = ReadRow.of(sheet).get(0);
        assertThat(row.thickness()).isEqualTo("7.09–9.45"); // 18 / 2.54 and 24 / 2.54
        assertThat(row.sid()).isEqualTo("43.31"); // 110 / 2.54
        assertThat(row.within()).contains("5.08 kV more per in more"); // 2 kV per cm
        assertThat(row.receptor()).contains("9.4x16.9 in"); // 24x43 cm
        assertThat(sheet.words()).doesNotContain(" cm");
    }

    @Test
    void the_longest_texts_that_a_row_may_have_stand_there_in_full() {
        var longest = "Centre exactly there, ".repeat(18).strip();
        var unbroken = "W".repeat(200);
        var sheet = parsed(
                LengthUnit.CENTIMETRE,
                aRow().withCentring(longest)
                        .withMeasureAt(unbroken)
                        .withNotes(longest)
                        .withBreathing(unbroken));
        assertThat(faults(sheet)).isEmpty();
        assertThat(ReadRow.dense(ReadRow.of(sheet).get(0).words()))
                .contains(ReadRow.dense(longest), unbroken + "Centre", unbroken + "Shielding");
    }

    @Test
    void letters_of_any_name_are_printed_and_what_has_no_letter_is_seen_by_its_number() {
        var sheet = parsed(LengthUnit.CENTIMETRE, aRow().withNotes("Łódź Ἀθῆναι Київ ½ µGy 骨 \uD83E\uDDB4"));
        assertThat(sheet.words()).contains("Łódź", "Київ", "½", "[U+9AA8]", "[U+1F9B4]");
        assertThat(faults(sheet)).isEmpty();
    }

    @Test
    void what_is_written_from_right_to_left_is_seen_in_its_order() {
        assertThat(Typeface.seen("see \u05D0\u05D1\u05D2 12 now")).isEqualTo("see 12 \u05D2\u05D1\u05D0 now");
        assertThat(Typeface.seen("left to right")).isEqualTo("left to right");
    }

    @Test
    void an_examination_of_many_bands_goes_on_under_its_name() {
        var rows = java.util.stream.IntStream.range(5, 45)
                .mapToObj(i -> aRow().withBand(i, i + 1))
                .toArray(RowBuilder[]::new);
        var sheet = parsed(LengthUnit.CENTIMETRE, rows);
        assertThat(faults(sheet)).isEmpty();
        assertThat(ReadRow.of(sheet)).hasSize(40).allSatisfy(row -> assertThat(row.examination())
                .startsWith("Lumbar spine, AP"));
    }

    @Test
    void bands_that_differ_in_more_than_kv_and_exposure_do_not_share_what_stands_beside_them() {
        var read = ReadRow.of(parsed(
                LengthUnit.CENTIMETRE,
                aRow().withBand(10, 14).withGrid("none"),
                aRow().withBand(14, 18),
                aRow().withBand(18, 22)));
        assertThat(read.stream().map(ReadRow::grid)).first().isEqualTo("no grid");
        assertThat(read.get(1).grid()).isEqualTo(read.get(2).grid()).contains(":1, focused at");
    }

    @Test
    void the_last_page_says_adjustments_duties_and_digests_in_full() {
        var words = parsed(DemoRoom.all().get(0), PaperSize.A4).words();
        assertThat(words)
                .contains(
                        "Dry plaster cast",
                        "mAs x 2",
                        "+3 kV",
                        "Ask the room page",
                        "Where it gives no answer to that, use distance and grid of the row and set what stands there",
                        "decide under local rules",
                        "Do not work it out from this sheet",
                        "When the service is down",
                        "Oregon OAR 333-106-0015",
                        SheetFixtures.DIGEST,
                        SheetFixtures.CHECKPOINT.hash(),
                        "Approved for use in this room");
    }

    @Test
    void a_sheet_without_a_cell_is_read_as_one_without_it() {
        var emptied = with(
                made(LengthUnit.CENTIMETRE, aRow()),
                block -> new Sheet.Block(
                        block.examination(),
                        block.place(),
                        block.bands(),
                        block.focalSpot(),
                        "",
                        block.sid(),
                        block.receptor(),
                        block.within(),
                        block.words()));
        assertThat(ReadRow.of(ParsedSheet.of(written(emptied, PaperSize.A4)))
                        .get(0)
                        .grid())
                .isNull();
    }
}
