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
    private static final float LABEL_SHARE = 0.33f;
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
        placeWhole((pen, at) -> {
            float beside = type.width(Style.TITLE, heading.heading()) + GAP;
            float down = pen.write(frame.left(), at + GAP, frame.width(), Style.TITLE, heading.heading());
            float foot = at + GAP + Style.TITLE.ascent() - Style.TEXT.ascent();
            return Math.max(
                    down, pen.write(frame.left() + beside, foot, frame.width() - beside, Style.TEXT, heading.text()));
        });
        var lines = sheet.adjustments();
        for (int i = 0; i < lines.size(); i += 2) {
            var pair = lines.subList(i, Math.min(i + 2, lines.size()));
            placeWhole((pen, at) -> beside(pen, at, pair));
        }
    }

    /** Two adjustments on one line. */
    private float beside(Pen pen, float at, List<AdjustmentLine> pair) {
        float half = frame.width() / 2;
        float down = at;
        for (int i = 0; i < pair.size(); i++) {
            down = Math.max(down, adjustment(pen, frame.left() + i * half, at, half - GAP, pair.get(i)));
        }
        return down;
    }

    private static float adjustment(Pen pen, float x, float at, float width, AdjustmentLine line) {
        float label = width * LABEL_SHARE;
        float effect = width * EFFECT_SHARE;
        float down = pen.write(x, at, label - GAP, Style.HEAD, line.label());
        down = Math.max(down, pen.write(x + label, at, effect - GAP, Style.HEAD, line.effect()));
        return Math.max(down, pen.write(x + label + effect, at, width - label - effect, Style.TEXT, line.when()));
    }

    /** Its heading stands on the line of its words: what stands once takes no page of its own beside a few rows. */
    private void paragraph(Paragraph paragraph) {
        placeWhole((pen, at) -> pen.writeLabelled(
                frame.left(),
                at + GAP / 2,
                frame.width(),
                List.of(new Sheet.Words(paragraph.heading(), paragraph.text()))));
    }
}
