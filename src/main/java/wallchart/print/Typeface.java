package wallchart.print;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The letters of one sheet: Liberation Sans, regular and bold, embedded. A character that it has no letter for is written by its number,
 * such as [U+1F9B4], so that nothing vanishes. Not thread-safe; of one sheet alone.
 */
final class Typeface {

    private final BaseFont regular = read("LiberationSans-Regular.ttf");
    private final BaseFont bold = read("LiberationSans-Bold.ttf");

    private static BaseFont read(String file) {
        try (var in = Typeface.class.getResourceAsStream("/liberation/" + file)) {
            return BaseFont.createFont(file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
        } catch (IOException missing) {
            throw new UncheckedIOException("the letters of the sheet cannot be read", missing);
        }
    }

    BaseFont of(Style style) {
        return style.bold() ? bold : regular;
    }

    float width(Style style, String text) {
        return of(style).getWidthPoint(text, style.size());
    }

    /** The text in letters that there are. */
    String printable(String text) {
        var written = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c <= Character.MAX_VALUE && regular.charExists(c) && bold.charExists(c)) {
                written.appendCodePoint(c);
            } else {
                written.append(String.format(Locale.ROOT, "[U+%04X]", c));
            }
        });
        return written.toString();
    }

    /** The text in lines that are no wider; a word that is wider is broken. At least one line. */
    List<String> lines(Style style, String text, float width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : printable(text).split(" +")) {
            var piece = word;
            if (!line.isEmpty() && width(style, line + " " + piece) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (width(style, piece) > width && line.isEmpty()) {
                int end = longest(style, piece, width);
                lines.add(piece.substring(0, end));
                piece = piece.substring(end);
            }
            line.append(line.isEmpty() ? "" : " ").append(piece);
        }
        lines.add(line.toString());
        return lines;
    }

    private int longest(Style style, String word, float width) {
        int end = 1;
        while (end < word.length() && width(style, word.substring(0, end + 1)) <= width) {
            end++;
        }
        return end;
    }

    /** A line as it is seen: what is written from right to left turned round, since letters are placed from the left. */
    static String seen(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        var bidi = new Bidi(line, Bidi.DIRECTION_LEFT_TO_RIGHT);
        var runs = new String[bidi.getRunCount()];
        var levels = new byte[runs.length];
        for (int i = 0; i < runs.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            var run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] =
                    levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        return String.join("", runs);
    }
}
