package wallchart.print;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import io.nayuki.qrcodegen.QrCode;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;

/** Writes a sheet as PDF. Pages hold nothing but black, grey and white: it is read from any printer. */
final class SheetWriter {

    private static final float QUIET_MODULES = 4; // ISO/IEC 18004 asks for four modules around the code; from memory

    private SheetWriter() {}

    /** @param at the instant that the file names as its making */
    static byte[] write(LaidSheet sheet, Instant at) {
        var paper = sheet.paper();
        var bytes = new ByteArrayOutputStream();
        try (var document = new Document(new Rectangle(paper.width(), paper.height()))) {
            var writer = PdfWriter.getInstance(document, bytes);
            describe(document, writer, sheet.head(), at);
            document.open();
            for (var page : sheet.pages()) {
                document.newPage();
                draw(writer.getDirectContent(), page, paper, sheet.type());
            }
        }
        return bytes.toByteArray();
    }

    private static void describe(Document document, PdfWriter writer, Sheet.Head head, Instant at) {
        document.addTitle("Technique chart, room " + head.room() + ", " + head.site());
        document.setDocumentLanguage("en");
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
        writer.getInfo().put(PdfName.CREATIONDATE, new PdfDate(GregorianCalendar.from(at.atZone(ZoneOffset.UTC))));
    }

    private static void draw(PdfContentByte page, List<Mark> marks, PaperSize paper, Typeface type) {
        for (var mark : marks) {
            if (mark instanceof Mark.Text text) {
                draw(page, text, paper, type);
            } else if (mark instanceof Mark.Box box) {
                fill(
                        page,
                        box.brightness(),
                        box.x(),
                        paper.height() - box.y() - box.height(),
                        box.width(),
                        box.height());
            } else if (mark instanceof Mark.Rule rule) {
                fill(page, 0, rule.x(), paper.height() - rule.y() - rule.thickness(), rule.width(), rule.thickness());
            } else {
                draw(page, (Mark.Code) mark, paper);
            }
        }
    }

    private static void draw(PdfContentByte page, Mark.Text text, PaperSize paper, Typeface type) {
        page.setGrayFill(text.white() ? 1 : 0);
        page.beginText();
        page.setFontAndSize(type.of(text.style()), text.style().size());
        page.setTextMatrix(text.x(), paper.height() - text.y());
        page.showText(text.words());
        page.endText();
    }

    private static void fill(PdfContentByte page, float brightness, float x, float y, float width, float height) {
        page.setGrayFill(brightness);
        page.rectangle(x, y, width, height);
        page.fill();
    }

    private static void draw(PdfContentByte page, Mark.Code code, PaperSize paper) {
        var modules = QrCode.encodeText(code.text(), QrCode.Ecc.MEDIUM);
        float module = code.side() / (modules.size + 2 * QUIET_MODULES);
        page.setGrayFill(0);
        for (int row = 0; row < modules.size; row++) {
            for (int column = 0; column < modules.size; column++) {
                if (modules.getModule(column, row)) {
                    float x = code.x() + (column + QUIET_MODULES) * module;
                    float y = code.y() + (row + QUIET_MODULES + 1) * module;
                    page.rectangle(x, paper.height() - y, module, module);
                }
            }
        }
        page.fill();
    }
}
