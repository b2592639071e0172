package wallchart.print;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.BodyPart;
import wallchart.chart.BodyParts;
import wallchart.chart.ExposureControl;
import wallchart.chart.Projection;
import wallchart.chart.Projections;
import wallchart.chart.Row;
import wallchart.chart.RowSetting;
import wallchart.equipment.Grid;
import wallchart.equipment.Room;
import wallchart.print.Sheet.BandLine;
import wallchart.print.Sheet.Block;
import wallchart.print.Sheet.Words;
import wallchart.quantity.Decimals;

/** Brings the rows of one examination into blocks: what is the same for consecutive bands is said once beside them. */
record BlockComposer(Room room, SheetWords write) {

    /** More would not fit on one page together. */
    private static final int MOST_BANDS = 10;

    /** @param rows of one examination, by ascending band */
    List<Block> blocks(List<Row> rows) {
        var blocks = new ArrayList<Block>();
        for (var row : rows) {
            var alone = alone(row);
            int last = blocks.size() - 1;
            if (last >= 0 && joins(blocks.get(last), alone)) {
                blocks.set(last, joined(blocks.get(last), alone));
            } else {
                blocks.add(alone);
            }
        }
        return blocks;
    }

    private static boolean joins(Block before, Block next) {
        return before.bands().size() < MOST_BANDS
                && withBands(before, next.bands()).equals(next);
    }

    private static Block joined(Block before, Block next) {
        var bands = new ArrayList<>(before.bands());
        bands.addAll(next.bands());
        return withBands(before, bands);
    }

    private static Block withBands(Block block, List<BandLine> bands) {
        return new Block(
                block.examination(),
                block.place(),
                List.copyOf(bands),
                block.focalSpot(),
                block.grid(),
                block.sid(),
                block.receptor(),
                block.within(),
                block.words());
    }

    private Block alone(Row row) {
        var set = row.setting();
        var examination = row.key().examination();
        return new Block(
                BodyParts.find(examination.bodyPart()).map(BodyPart::label).orElse(examination.bodyPart()) + ", "
                        + Projections.find(examination.projection())
                                .map(Projection::label)
                                .orElse(examination.projection()),
                SheetWords.spoken(examination.support().slug()),
                List.of(line(row)),
                set.focalSpot().slug(),
                grid(set.grid()),
                write.length(set.sid().centimetres()),
                receptor(set),
                within(set),
                words(row));
    }

    private BandLine line(Row row) {
        var control = row.setting().control();
        boolean automatic = control instanceof ExposureControl.Automatic;
        return new BandLine(
                write.band(row.key().band()),
                Decimals.plain(row.setting().kV().kilovolts()),
                automatic
                        ? "AEC "
                                + ((ExposureControl.Automatic) control)
                                        .chamberWords()
                                        .replace("+", " + ")
                        : control.mAs().toString(),
                automatic ? automatic((ExposureControl.Automatic) control) : "",
                write.length(row.referenceThickness().centimetres()));
    }

    private static String automatic(ExposureControl.Automatic control) {
        return "density " + control.density() + ", back-up " + control.backup();
    }

    private String grid(String id) {
        return room.findGrid(id).map(this::grid).orElse(id.equals(Grid.NONE) ? "no grid" : id);
    }

    private String grid(Grid grid) {
        return Decimals.plain(grid.ratio()) + ":1, "
                + grid.focalDistance()
                        .map(focus -> "focused at " + write.withUnit(focus.centimetres()))
                        .orElse("parallel")
                + " (" + grid.id() + ")";
    }

    private String receptor(RowSetting set) {
        return room.findReceptor(set.receptor())
                        .map(receptor ->
                                receptor.name() + ", " + receptor.kind().words())
                        .orElse(set.receptor())
                + "; field " + write.field(set.field()) + " "
                + set.orientation().slug();
    }

    private String within(RowSetting set) {
        var parts = new ArrayList<String>();
        parts.add(write.rule(set.thicknessMethod()));
        set.kVWindow().ifPresent(window -> parts.add(window.toString()));
        set.longestTime().ifPresent(time -> parts.add("at most " + time));
        parts.add("target EI "
                + set.targetExposureIndex().map(String::valueOf).orElseGet(() -> room.findReceptor(set.receptor())
                        .map(receptor -> String.valueOf(receptor.targetExposureIndex()))
                        .orElse("not stated")));
        if (!set.addedFiltration().isNone()) {
            parts.add("filter " + set.addedFiltration());
        }
        return String.join("; ", parts);
    }

    private static List<Words> words(Row row) {
        var positioning = row.positioning();
        var words = new ArrayList<Words>();
        add(words, "Measure", positioning.measureAt());
        positioning
                .centralRayAngleDegrees()
                .filter(angle -> angle.signum() != 0)
                .ifPresent(angle -> words.add(new Words("Ray", angle(Decimals.plain(angle)))));
        add(words, "Centre", positioning.centring());
        add(words, "Breathing", positioning.breathing());
        add(words, "Shielding", positioning.shielding());
        add(words, "Notes", positioning.notes());
        return List.copyOf(words);
    }

    private static String angle(String degrees) {
        return (degrees.startsWith("-") ? degrees : "+" + degrees) + "°";
    }

    private static void add(List<Words> words, String label, String text) {
        if (!text.isEmpty()) {
            words.add(new Words(label, text));
        }
    }
}
