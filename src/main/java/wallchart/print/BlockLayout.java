package wallchart.print;

import wallchart.print.Column.Columns;
import wallchart.print.Sheet.BandLine;
import wallchart.print.Sheet.Block;
import wallchart.print.Sheet.Section;

/** Puts one block of rows, and the heads above them, on a page. Tried first with a pen that is thrown away, to know its height. */
record BlockLayout(Columns columns, String unit, Typeface type) {

    private static final float PAD = 2.5f;
    private static final float BAR = 6;
    private static final float DARK = 0;
    private static final float LIGHT = 0.88f;

    /** Region and group, in letters of light on dark where the group is one of children; then the heads of the columns. */
    float head(Pen pen, float y, Section section, boolean continued) {
        var words = section.region() + " – " + section.group() + (continued ? " (continued)" : "");
        var shown = section.children() ? "CHILDREN: " + words : words;
        float height = Style.TITLE.lineHeight()
                        * type.lines(Style.TITLE, shown, columns.width() - 2 * BAR)
                                .size()
                + 2 * PAD;
        pen.add(new Mark.Box(columns.left(), y, columns.width(), height, section.children() ? DARK : LIGHT));
        pen.write(columns.left() + BAR, y + PAD, columns.width() - 2 * BAR, Style.TITLE, shown, section.children());
        return columnHeads(pen, y + height + PAD);
    }

    private float columnHeads(Pen pen, float y) {
        float down = y;
        for (var column : Column.values()) {
            down = Math.max(down, cell(pen, y, column, Style.HEAD, column.head(unit)));
        }
        return down + PAD;
    }

    /** All of a block, none of it elsewhere: left what is examined, then what is set band by band, right how. */
    float block(Pen pen, float y, Block block, boolean children) {
        pen.add(new Mark.Rule(columns.left(), y, columns.width(), 0.9f));
        float down = Math.max(examination(pen, y + PAD, block), bands(pen, y + PAD, block));
        float from = columns.x(Column.FOCAL_SPOT);
        float words = columns.left() + columns.width() - from;
        down = Math.max(down, pen.writeLabelled(from, sides(pen, y + PAD, block) + 1, words, block.words()));
        if (children) {
            pen.add(new Mark.Box(columns.left() - BAR - 1, y, BAR, down + PAD - y, DARK));
        }
        return down + PAD;
    }

    private float examination(Pen pen, float y, Block block) {
        float down = cell(pen, y, Column.EXAMINATION, Style.TITLE, block.examination());
        return cell(pen, down, Column.EXAMINATION, Style.TEXT, block.place());
    }

    /** What is the same for all its bands. */
    private float sides(Pen pen, float y, Block block) {
        float down = cell(pen, y, Column.FOCAL_SPOT, Style.TITLE, block.focalSpot());
        down = Math.max(down, cell(pen, y, Column.SID, Style.TITLE, block.sid()));
        down = Math.max(down, small(pen, y, Column.GRID, Style.TITLE, block.grid()));
        down = Math.max(down, small(pen, y, Column.RECEPTOR, Style.TITLE, block.receptor()));
        return Math.max(down, small(pen, y, Column.WITHIN, Style.TITLE, block.within()));
    }

    private float bands(Pen pen, float y, Block block) {
        float at = y;
        for (int i = 0; i < block.bands().size(); i++) {
            if (i > 0) {
                float from = columns.x(Column.THICKNESS);
                pen.add(new Mark.Rule(from, at, columns.x(Column.FOCAL_SPOT) - from - 2 * PAD, 0.4f));
                at += 1;
            }
            at = band(pen, at, block.bands().get(i)) + 1;
        }
        return at;
    }

    private float band(Pen pen, float y, BandLine band) {
        float down = cell(pen, y, Column.THICKNESS, Style.SET, band.thickness());
        down = Math.max(down, cell(pen, y, Column.KV, Style.SET, band.kV()));
        float beside = small(pen, y, Column.REFERENCE, Style.SET, band.reference());
        float exposed = cell(pen, y, Column.EXPOSURE, Style.SET, band.exposure());
        down = Math.max(down, Math.max(exposed, beside));
        float under = columns.x(Column.FOCAL_SPOT) - columns.x(Column.EXPOSURE) - 2 * PAD;
        return Math.max(
                down, pen.write(columns.x(Column.EXPOSURE), Math.max(exposed, beside), under, Style.TEXT, band.more()));
    }

    private float cell(Pen pen, float y, Column column, Style style, String text) {
        return pen.write(columns.x(column), y, columns.room(column), style, text);
    }

    /** Small letters on the same line as larger ones beside them. */
    private float small(Pen pen, float y, Column column, Style beside, String text) {
        return cell(pen, y + beside.ascent() - Style.TEXT.ascent(), column, Style.TEXT, text);
    }
}
