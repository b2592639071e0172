package wallchart.print;

import java.util.ArrayList;
import java.util.List;

/** What stands on every page of a sheet, around its rows: room, version, code and facts above, caution and page number below. */
final class PageFrame {

    static final float MARGIN = 26;
    private static final float CODE = 82;
    private static final float GAP = 10;
    private static final float PLACE_SHARE = 0.27f;
    private static final float PAGE_NUMBER = 90;
    private static final float PAD = 4;

    private final Sheet.Head head;
    private final PaperSize paper;
    private final Typeface type;

    PageFrame(Sheet.Head head, PaperSize paper, Typeface type) {
        this.head = head;
        this.paper = paper;
        this.type = type;
    }

    float left() {
        return MARGIN;
    }

    float width() {
        return paper.width() - 2 * MARGIN;
    }

    /** Where the rows begin. */
    float top() {
        return above(new Pen(type));
    }

    /** Where the rows end. */
    float bottom() {
        return paper.height() - MARGIN - footHeight();
    }

    /** The page with that number of so many, with what stands on it. */
    List<Mark> around(List<Mark> content, int number, int pages) {
        var pen = new Pen(type);
        above(pen);
        below(pen, number, pages);
        var all = new ArrayList<>(pen.marks());
        all.addAll(content);
        return all;
    }

    private float above(Pen pen) {
        float place = width() * PLACE_SHARE;
        float facts = width() - place - CODE - 2 * GAP;
        float down = place(pen, place);
        float y = MARGIN;
        for (var fact : head.facts()) {
            y = pen.write(MARGIN + place + GAP, y, facts, Style.TEXT, fact);
        }
        head.address().ifPresent(page -> pen.add(new Mark.Code(paper.width() - MARGIN - CODE, MARGIN, CODE, page)));
        down = Math.max(Math.max(down, y), MARGIN + CODE) + PAD;
        pen.add(new Mark.Rule(MARGIN, down, width(), 1.5f));
        return down + PAD;
    }

    private float place(Pen pen, float width) {
        float y = pen.write(MARGIN, MARGIN - PAD, width, Style.ROOM, "Room " + head.room());
        y = pen.write(MARGIN, y, width, Style.TITLE, head.roomName());
        y = pen.write(MARGIN, y, width, Style.TEXT, head.site());
        y = pen.write(MARGIN, y, width, Style.TITLE, "Holds for room " + head.room() + " only");
        y = pen.write(MARGIN, y, width, Style.HEAD, head.part());
        return head.invented() ? invented(pen, y + PAD, width) : y;
    }

    private float invented(Pen pen, float y, float width) {
        var words = "INVENTED. NOT FOR PATIENTS.";
        float height = Style.TITLE.lineHeight() + PAD;
        pen.add(new Mark.Box(MARGIN, y, Math.min(width, type.width(Style.TITLE, words) + 2 * PAD), height, 0));
        pen.write(MARGIN + PAD, y + PAD / 2, width, Style.TITLE, words, true);
        return y + height;
    }

    private float footHeight() {
        return PAD
                + type.lines(Style.TEXT, head.caution(), width() - PAGE_NUMBER).size() * Style.TEXT.lineHeight();
    }

    private void below(Pen pen, int number, int pages) {
        float y = bottom();
        pen.add(new Mark.Rule(MARGIN, y, width(), 0.5f));
        pen.write(MARGIN, y + PAD, width() - PAGE_NUMBER, Style.TEXT, head.caution());
        var page = "Page " + number + " of " + pages;
        pen.write(paper.width() - MARGIN - type.width(Style.TITLE, page), y + PAD, PAGE_NUMBER, Style.TITLE, page);
    }
}
