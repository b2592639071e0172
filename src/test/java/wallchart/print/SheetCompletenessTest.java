package wallchart.print;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.print.ReadRow.dense;
import static wallchart.print.SheetFixtures.sheet;
import static wallchart.print.SheetFixtures.with;
import static wallchart.print.SheetFixtures.written;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.DemoRoom;
import wallchart.Validation;
import wallchart.chart.BodyParts;
import wallchart.chart.BodyRegion;
import wallchart.chart.ChartContent;
import wallchart.chart.ExposureControl.Automatic;
import wallchart.chart.Projections;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.print.Sheet.Block;
import wallchart.quantity.Decimals;
import wallchart.quantity.LengthUnit;

/** Whether a printed sheet has what three published rules ask of a technique chart, for every row of the demo's rooms. */
class SheetCompletenessTest {

    /** What a rule asks for, and how one sees on paper that it stands there for a row. */
    private static final Map<String, Asked> ASKED = new LinkedHashMap<>();

    private record Asked(boolean ofAecOnly, Stands stands) {}

    private interface Stands {
        boolean on(ReadRow read, Row row, Room room);
    }

    static {
        asked("examination", (read, row, room) -> dense(read.examination())
                .startsWith(dense(label(row)
                        + ", "
                        + Projections.find(row.key().examination().projection())
                                .orElseThrow()
                                .label())));
        asked("size in cm", (read, row, room) -> read.thickness().equals(band(row)));
        asked(
                "technique factors",
                (read, row, room) -> read.kV()
                                .equals(Decimals.plain(row.setting().kV().kilovolts()))
                        && (row.setting().control() instanceof Automatic
                                || read.exposure()
                                        .equals(row.setting().control().mAs().toString())));
        asked(
                "age",
                (read, row, room) -> read.section().endsWith(" – " + group(row))
                        || read.section().endsWith(" – " + group(row) + " (continued)"));
        asked("receptor type", (read, row, room) -> dense(text(read.receptor()))
                .contains(dense(room.findReceptor(row.setting().receptor())
                        .orElseThrow()
                        .kind()
                        .words())));
        asked("receptor size", (read, row, room) -> dense(text(read.receptor()))
                .contains(dense("field " + row.setting().field() + " cm")));
        asked("grid type and focal distance", (read, row, room) -> grid(read, row, room));
        asked("SID", (read, row, room) -> text(read.sid())
                .equals(Decimals.plain(row.setting().sid().centimetres())));
        asked("shielding", (read, row, room) -> dense(read.words())
                .contains(dense("Shielding: " + row.positioning().shielding())));
        ofAec("AEC cell choice", (read, row, room) -> dense(text(read.exposure()))
                .equals(dense("AEC " + ((Automatic) row.setting().control()).chamberWords())));
        ofAec("AEC density setting", (read, row, room) -> read.more()
                .contains("density " + ((Automatic) row.setting().control()).density() + ","));
        ofAec("AEC back-up mAs", (read, row, room) -> read.more()
                .contains("back-up " + row.setting().control().mAs()));
    }

    private static void asked(String what, Stands stands) {
        ASKED.put(what, new Asked(false, stands));
    }

    private static void ofAec(String what, Stands stands) {
        ASKED.put(what, new Asked(true, stands));
    }

    private static String text(String cell) {
        return cell == null ? "" : cell;
    }

    private static String label(Row row) {
        return BodyParts.find(row.key().examination().bodyPart()).orElseThrow().label();
    }

    private static String band(Row row) {
        var band = row.key().band();
        return Decimals.plain(band.from().centimetres()) + "–"
                + Decimals.plain(band.to().centimetres());
    }

    private static String group(Row row) {
        return SheetFixtures.GROUPS.stream()
                .filter(group -> group.id().equals(row.key().examination().patientGroup()))
                .findFirst()
                .orElseThrow()
                .label();
    }

    private static boolean grid(ReadRow read, Row row, Room room) {
        var printed = dense(text(read.grid()));
        var grid = room.findGrid(row.setting().grid());
        if (grid.isEmpty()) {
            return printed.equals("nogrid");
        }
        var focus = grid.get()
                .focalDistance()
                .map(distance -> "focusedat" + dense(distance.toString()))
                .orElse("parallel");
        return printed.startsWith(Decimals.plain(grid.get().ratio()) + ":1," + focus);
    }

    /**
     * Oregon OAR 333-106-0015: a chart in the vicinity of the control panel that gives, for all examinations performed with the system,
     * the anatomical size in cm against the technique factors, the receptor combination, type and focal distance of the grid if any, the
     * SID, and for AEC the cell choice, the optimum kV and the density setting.
     */
    private static final List<String> OREGON = List.of(
            "examination",
            "size in cm",
            "technique factors",
            "receptor type",
            "receptor size",
            "grid type and focal distance",
            "SID",
            "AEC cell choice",
            "AEC density setting");

    /**
     * Kansas K.A.R. 28-35-242a(a)(3): available to the operator, for each examination, anatomical part and size, thickness and age,
     * against the factors, receptor type and size, type and focal distance of the grid if any, SID, type and placement of shielding.
     */
    private static final List<String> KANSAS = List.of(
            "examination",
            "size in cm",
            "age",
            "technique factors",
            "receptor type",
            "receptor size",
            "grid type and focal distance",
            "SID",
            "shielding");

    /**
     * Virginia 12VAC5-481-1591(A)(3): in the vicinity of the control panel, for all examinations, part and size, thickness (or age for
     * children), against the factors, receptor type and size, SID, type and location of shielding.
     */
    private static final List<String> VIRGINIA = List.of(
            "examination", "size in cm", "technique factors", "receptor type", "receptor size", "SID", "shielding");

    /** 25 Pa. Code 221.28 and 21 CFR 1020.31(a): the maximum mAs where AEC is used is indicated before the exposure. */
    private static final List<String> BACK_UP = List.of("AEC back-up mAs");

    private static final List<List<String>> RULES = List.of(OREGON, KANSAS, VIRGINIA, BACK_UP);

    static List<DemoRoom> everyRoom() {
        return DemoRoom.all();
    }

    @Validation
    @ParameterizedTest
    @MethodSource("everyRoom")
    void every_row_has_on_paper_what_the_rules_ask_for(DemoRoom demo) {
        var rows = demo.versions().get(1).content().rows();
        var read = read(sheet(demo, LengthUnit.CENTIMETRE));
        assertThat(RULES).allSatisfy(rule -> assertThat(missing(read, rows, demo.room(), rule))
                .isEmpty());
    }

    private static List<ReadRow> read(Sheet sheet) {
        return ReadRow.of(ParsedSheet.of(written(sheet, PaperSize.A4)));
    }

    /** What is not on paper, row by row. */
    private static List<String> missing(List<ReadRow> read, List<Row> rows, Room room, List<String> rule) {
        BiPredicate<ReadRow, Row> same =
                (printed, row) -> dense(text(printed.examination())).equals(dense(examination(row)))
                        && text(printed.thickness()).equals(band(row))
                        && printed.section().contains(" – " + group(row));
        var missing = new ArrayList<String>();
        for (var row : rows) {
            var printed = read.stream().filter(one -> same.test(one, row)).toList();
            if (printed.size() != 1) {
                missing.add(row.key() + " stands there " + printed.size() + " times");
                continue;
            }
            rule.stream()
                    .filter(what ->
                            !ASKED.get(what).ofAecOnly() || row.setting().control() instanceof Automatic)
                    .filter(what -> !ASKED.get(what).stands().on(printed.get(0), row, room))
                    .forEach(what -> missing.add(row.key() + " lacks " + what));
        }
        return missing;
    }

    private static String examination(Row row) {
        var key = row.key().examination();
        return label(row) + ", "
                + Projections.find(key.projection()).orElseThrow().label()
                + key.support().slug().replace('-', ' ');
    }

    private record Mutation(String what, UnaryOperator<Block> change) {
        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Mutation> sheetsWithoutSomething() {
        return Stream.of(
                new Mutation(
                        "grid type and focal distance",
                        b -> copy(b, b.focalSpot(), "", b.sid(), b.receptor(), b.words())),
                new Mutation("SID", b -> copy(b, b.focalSpot(), b.grid(), "", b.receptor(), b.words())),
                new Mutation(
                        "receptor type",
                        b -> copy(
                                b,
                                b.focalSpot(),
                                b.grid(),
                                b.sid(),
                                b.receptor().replaceAll("^.*; ", ""),
                                b.words())),
                new Mutation(
                        "receptor size",
                        b -> copy(
                                b,
                                b.focalSpot(),
                                b.grid(),
                                b.sid(),
                                b.receptor().split(";")[0],
                                b.words())),
                new Mutation(
                        "shielding",
                        b -> copy(
                                b,
                                b.focalSpot(),
                                b.grid(),
                                b.sid(),
                                b.receptor(),
                                b.words().stream()
                                        .filter(words -> !words.label().equals("Shielding"))
                                        .toList())),
                new Mutation(
                        "AEC density setting",
                        b -> bands(
                                b,
                                l -> new Sheet.BandLine(
                                        l.thickness(),
                                        l.kV(),
                                        l.exposure(),
                                        l.more().replaceAll("^density [^,]*, ", ""),
                                        l.reference()))),
                new Mutation(
                        "AEC cell choice",
                        b -> bands(
                                b,
                                l -> new Sheet.BandLine(
                                        l.thickness(),
                                        l.kV(),
                                        l.exposure().startsWith("AEC") ? "AEC" : l.exposure(),
                                        l.more(),
                                        l.reference()))),
                new Mutation(
                        "AEC back-up mAs",
                        b -> bands(
                                b,
                                l -> new Sheet.BandLine(
                                        l.thickness(),
                                        l.kV(),
                                        l.exposure(),
                                        l.more().replaceAll("back-up .*", "back-up"),
                                        l.reference()))),
                new Mutation(
                        "technique factors",
                        b -> bands(
                                b,
                                l -> new Sheet.BandLine(l.thickness(), "60", l.exposure(), l.more(), l.reference()))));
    }

    private static Block copy(Block b, String spot, String grid, String sid, String receptor, List<Sheet.Words> words) {
        return new Block(b.examination(), b.place(), b.bands(), spot, grid, sid, receptor, b.within(), words);
    }

    private static Block bands(Block b, UnaryOperator<Sheet.BandLine> change) {
        return new Block(
                b.examination(),
                b.place(),
                b.bands().stream().map(change).toList(),
                b.focalSpot(),
                b.grid(),
                b.sid(),
                b.receptor(),
                b.within(),
                b.words());
    }

    /** The guard of the guard: every rule that asks for something notices a sheet without it, and no other rule complains. */
    @ParameterizedTest
    @MethodSource("sheetsWithoutSomething")
    void a_sheet_without_it_is_noticed_by_every_rule_that_asks_for_it(Mutation mutation) {
        var read = read(with(chests(), mutation.change()));
        for (var rule : RULES) {
            var missing = missing(read, CHESTS, ROOM, rule);
            if (rule.contains(mutation.what())) {
                assertThat(missing).isNotEmpty().allMatch(line -> line.endsWith(mutation.what()));
            } else {
                assertThat(missing).isEmpty();
            }
        }
    }

    private static final Room ROOM = DemoRoom.all().get(0).room();
    private static final List<Row> CHESTS = DemoRoom.all().get(0).versions().get(1).content().rows().stream()
            .filter(row -> Selection.regionOf(row) == BodyRegion.CHEST)
            .toList();

    private static Sheet chests() {
        return sheet(ROOM, new ChartContent(CHESTS, List.of()), LengthUnit.CENTIMETRE, Selection.WHOLE);
    }

    @Test
    void a_sheet_without_a_row_is_noticed() {
        var first = new boolean[] {true};
        var cut = with(chests(), block -> {
            var kept = first[0] ? block.bands().subList(0, block.bands().size() - 1) : block.bands();
            first[0] = false;
            return new Block(
                    block.examination(),
                    block.place(),
                    kept,
                    block.focalSpot(),
                    block.grid(),
                    block.sid(),
                    block.receptor(),
                    block.within(),
                    block.words());
        });
        assertThat(missing(read(cut), CHESTS, ROOM, VIRGINIA)).singleElement().satisfies(line -> assertThat(line)
                .endsWith("stands there 0 times"));
    }

    @Test
    void every_demanded_thing_is_looked_for() {
        var all = Stream.of(OREGON, KANSAS, VIRGINIA, BACK_UP)
                .flatMap(List::stream)
                .distinct();
        assertThat(all).containsExactlyInAnyOrderElementsOf(ASKED.keySet());
    }
}
