package wallchart.print;

import java.util.List;

/**
 * A sheet of which it is decided what stands on which page; not yet a file. Not thread-safe, as its letters are not.
 *
 * @param pages what stands on each, from the first
 */
record LaidSheet(Sheet.Head head, PaperSize paper, Typeface type, List<List<Mark>> pages) {

    static LaidSheet of(Sheet sheet, PaperSize paper) {
        var type = new Typeface();
        return new LaidSheet(sheet.head(), paper, type, SheetLayout.pages(sheet, paper, type));
    }
}
