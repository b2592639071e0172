package wallchart.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import wallchart.print.Sheet.AdjustmentLine;
import wallchart.print.Sheet.Paragraph;
import wallchart.print.Sheet.Section;

/**
 * Decides what of a sheet stands where, page by page: no row is cut, and the heads stand again on every page. Works from above to below;
 * of one sheet alone.
 */
final class SheetLayout {

    private static final float GAP = 6;
    private static final float LABEL_SHARE = 0.3f;
    private static final float EFFECT_SHARE = 0.15f;

    private final Sheet sheet;
    private final Typeface type;
    private final PageFrame frame;
    private final BlockLayout blocks;
    private final float top;
    private final List<List<Mark>> pages = new ArrayList<>();
    private float y;

    private SheetLayout(Sheet sheet, PaperSize paper, Typeface type) {
        this.sheet = sheet;
        this.type = type;
        this.frame = new PageFrame(sheet.head(), paper, type);
        this.blocks = new BlockLayout(
                Column.over(frame.left(), frame.width()), sheet.head().lengthUnit(), type);
        this.top = frame.top();
        turn();
    }

    /** The pages with everything that stands on them. */
    static List<List<Mark>> pages(Sheet sheet, PaperSize paper, Typeface type) {
        var layout = new SheetLayout(sheet, paper, type);
        sheet.sections().forEach(layout::section);
        layout.adjustments();
        sheet.closing().forEach(layout::paragraph);
        var inside = layout.pages;
        return IntStream.range(0, inside.size())
                .mapToObj(i -> layout.frame.around(inside.get(i), i + 1, inside.size()))
                .toList();
    }

    private void turn() {
        pages.add(new ArrayList<>());
        y = top;
    }

    private void section(Section section) {
        boolean headed = false;
        boolean continued = false;
        for (var block : section.blocks()) {
            BiFunction<Pen, Float, Float> rows = (pen, at) -> blocks.block(pen, at, block, section.children());
            boolean first = !headed;
            if (first && !fits((pen, at) -> rows.apply(pen, blocks.head(pen, at + GAP, section, false)))
                    || !first && !fits(rows)) {
                turn();
                headed = false;
            }
            if (!headed) {
                boolean again = continued;
                place((pen, at) -> blocks.head(pen, at == top ? at : at + GAP, section, again));
                headed = true;
            }
            place(rows);
            continued = true;
        }
    }

    /** Whether what is drawn so ends above the foot of the page. */
    private boolean fits(BiFunction<Pen, Float, Float> drawing) {
        return drawing.apply(new Pen(type), y) <= frame.bottom();
    }

    private void place(BiFunction<Pen, Float, Float> drawing) {
        var pen = new Pen(type);
        y = drawing.apply(pen, y);
        pages.get(pages.size() - 1).addAll(pen.marks());
    }

    private void placeWhole(BiFunction<Pen, Float, Float> drawing) {
        if (!fits(drawing)) {
            turn();
        }
        place(drawing);
    }

    private void adjustments() {
        var heading = new Paragraph(
                "Named adjustments of this version",
                sheet.adjustments().isEmpty()
                        ? "It has none."
                        : "Ask the room page with them: each adds kV or multiplies mAs, and the console's limits still hold.");
        paragraph(heading);
        sheet.adjustments().forEach(line -> placeWhole((pen, at) -> adjustment(pen, at, line)));
    }

    private float adjustment(Pen pen, float at, AdjustmentLine line) {
        float label = frame.width() * LABEL_SHARE;
        float effect = frame.width() * EFFECT_SHARE;
        float down = pen.write(frame.left(), at, label - GAP, Style.HEAD, line.label());
        down = Math.max(down, pen.write(frame.left() + label, at, effect - GAP, Style.HEAD, line.effect()));
        return Math.max(
                down,
                pen.write(frame.left() + label + effect, at, frame.width() - label - effect, Style.TEXT, line.when()));
    }

    private void paragraph(Paragraph paragraph) {
        placeWhole((pen, at) -> {
            float down = pen.write(frame.left(), at + GAP, frame.width(), Style.TITLE, paragraph.heading());
            return pen.write(frame.left(), down, frame.width(), Style.TEXT, paragraph.text());
        });
    }
}
