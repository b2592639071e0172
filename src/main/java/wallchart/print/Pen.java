package wallchart.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Writes lines of text one under the other and tells how far down it came. Not thread-safe. */
final class Pen {

    private static final int SHORT = 12;

    private final Typeface type;
    private final List<Mark> marks = new ArrayList<>();

    Pen(Typeface type) {
        this.type = type;
    }

    List<Mark> marks() {
        return marks;
    }

    void add(Mark mark) {
        marks.add(mark);
    }

    /** @return the lower end of the last line */
    float write(float x, float y, float width, Style style, String text) {
        return write(x, y, width, style, text, false);
    }

    float write(float x, float y, float width, Style style, String text, boolean white) {
        if (text.isEmpty()) {
            return y;
        }
        float at = y;
        for (var line : type.lines(style, text, width)) {
            marks.add(new Mark.Text(x, at + style.ascent(), style, Typeface.seen(line), white));
            at += style.lineHeight();
        }
        return at;
    }

    /** Several texts behind one another, each with its label in bold, as wide as there is room. */
    float writeLabelled(float x, float y, float width, List<Sheet.Words> texts) {
        float at = y;
        float from = x;
        for (var text : texts) {
            float label = type.width(Style.HEAD, text.label() + ": ");
            if (from > x && from + label + type.width(Style.TEXT, firstWord(text)) > x + width) {
                from = x;
                at += Style.TEXT.lineHeight();
            }
            write(from, at, width, Style.HEAD, text.label() + ":");
            var lines = hanging(text.text(), width - (from + label - x), width);
            for (int i = 0; i < lines.size(); i++) {
                float begin = i == 0 ? from + label : x;
                at += i == 0 ? 0 : Style.TEXT.lineHeight();
                marks.add(
                        new Mark.Text(begin, at + Style.TEXT.ascent(), Style.TEXT, Typeface.seen(lines.get(i)), false));
                from = begin;
            }
            from += type.width(Style.TEXT, lines.get(lines.size() - 1) + "   ");
        }
        return texts.isEmpty() ? at : at + Style.TEXT.lineHeight();
    }

    private String firstWord(Sheet.Words text) {
        var word = type.printable(text.text()).split(" ", 2)[0];
        return word.substring(0, Math.min(word.length(), SHORT));
    }

    /** The text in lines of which the first is shorter than the others. */
    private List<String> hanging(String text, float first, float others) {
        var lines = new ArrayList<>(type.lines(Style.TEXT, text, first));
        var begun = lines.get(0);
        var rest = type.printable(text)
                .strip()
                .replaceAll(" +", " ")
                .substring(begun.length())
                .strip();
        return rest.isEmpty()
                ? List.of(begun)
                : Stream.concat(Stream.of(begun), type.lines(Style.TEXT, rest, others).stream())
                        .toList();
    }
}
