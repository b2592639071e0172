package wallchart.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A sheet as another library reads it back: every piece of text with its place and size, page by page. */
public final class ParsedSheet {

    /**
     * Letters that were placed together.
     *
     * @param y of their feet, from the upper edge
     */
    public record Piece(int page, double x, double y, double width, double size, boolean bold, String words) {
        public double right() {
            return x + width;
        }
    }

    private final byte[] file;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<double[]> pages = new ArrayList<>();

    private ParsedSheet(byte[] file) {
        this.file = file;
    }

    public static ParsedSheet of(byte[] file) {
        var parsed = new ParsedSheet(file);
        try (var document = Loader.loadPDF(file)) {
            for (var page : document.getPages()) {
                parsed.pages.add(new double[] {
                    page.getMediaBox().getWidth(), page.getMediaBox().getHeight()
                });
            }
            parsed.read(document);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return parsed;
    }

    private void read(PDDocument document) throws IOException {
        var letters = new ArrayList<Piece>();
        var reader = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(piece(getCurrentPageNo(), letter));
            }
        };
        reader.getText(document);
        letters.forEach(this::join);
    }

    private static Piece piece(int page, TextPosition letter) {
        return new Piece(
                page,
                letter.getXDirAdj(),
                letter.getYDirAdj(),
                letter.getWidthDirAdj(),
                letter.getFontSizeInPt(),
                letter.getFont().getName().contains("Bold"),
                letter.getUnicode());
    }

    /** Letters that follow one another on a line, as they were placed, are one piece. */
    private void join(Piece letter) {
        var last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
        boolean follows = last != null
                && last.page() == letter.page()
                && Math.abs(last.y() - letter.y()) < 0.01
                && Math.abs(last.right() - letter.x()) < 0.1
                && last.bold() == letter.bold()
                && last.size() == letter.size();
        if (follows) {
            pieces.set(
                    pieces.size() - 1,
                    new Piece(
                            last.page(),
                            last.x(),
                            last.y(),
                            letter.right() - last.x(),
                            last.size(),
                            last.bold(),
                            last.words() + letter.words()));
        } else {
            pieces.add(letter);
        }
    }

    public int pages() {
        return pages.size();
    }

    public double width(int page) {
        return pages.get(page - 1)[0];
    }

    public double height(int page) {
        return pages.get(page - 1)[1];
    }

    public List<Piece> pieces() {
        return pieces;
    }

    public List<Piece> pieces(int page) {
        return pieces.stream().filter(piece -> piece.page() == page).toList();
    }

    /** All words of a page, in the order in which they were placed. */
    public String words(int page) {
        return String.join(" ", pieces(page).stream().map(Piece::words).toList());
    }

    public String words() {
        return String.join(" ", pieces.stream().map(Piece::words).toList());
    }

    /** A page as a printer without colours would put it on paper. */
    public java.awt.image.BufferedImage grey(int page, float dotsPerInch) {
        try (var document = Loader.loadPDF(file)) {
            return new PDFRenderer(document).renderImageWithDPI(page - 1, dotsPerInch, ImageType.GRAY);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
