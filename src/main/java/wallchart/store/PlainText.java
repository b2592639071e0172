package wallchart.store;

import java.text.Normalizer;
import java.util.Optional;

/**
 * What every text must be that is kept, signed or printed: a reader sees all of it, in the order in which it was written, on the lines
 * where it stands, and it has one digest everywhere. One rule for names, reasons, titles, notes and whatever else people write.
 */
public final class PlainText {

    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    /** No script needs more marks over one letter; Unicode itself ends at 30 (UAX #15, stream-safe text), which hides lines. From memory. */
    private static final int MOST_MARKS = 4;

    private PlainText() {}

    /** Why the text may not be kept; empty where it may. */
    public static Optional<String> problem(String text, int mostCharacters) {
        if (text.length() > mostCharacters) {
            return Optional.of(
                    "has " + text.length() + " characters, at most " + mostCharacters + " are kept: shorten it");
        }
        return unencodable(text).or(() -> hiding(text));
    }

    /** Why the text has no digest; empty where it has one. Older texts need be no more than that. */
    public static Optional<String> unencodable(String text) {
        if (text.codePoints().anyMatch(PlainText::isUnwritable)) {
            return Optional.of("holds a control character or half a character: type it anew in plain words");
        }
        return Normalizer.isNormalized(text, Normalizer.Form.NFC)
                ? Optional.empty()
                : Optional.of("is not in Unicode normal form C: type it anew, or save the file as NFC");
    }

    private static Optional<String> hiding(String text) {
        if (text.codePoints().anyMatch(PlainText::isHidden)) {
            return Optional.of(
                    "holds a character that nobody sees, such as one that turns the direction of writing or breaks the line: type it anew in plain words");
        }
        return mostMarks(text) > MOST_MARKS
                ? Optional.of("heaps more than " + MOST_MARKS + " marks on one letter: type it anew in plain words")
                : Optional.empty();
    }

    private static boolean isUnwritable(int codePoint) {
        return Character.isISOControl(codePoint)
                || Character.getType(codePoint) == Character.SURROGATE
                || !Character.isDefined(codePoint);
    }

    /** The two joiners shape letters of some scripts and are left to them. */
    private static boolean isHidden(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.FORMAT -> codePoint != ZERO_WIDTH_JOINER && codePoint != ZERO_WIDTH_NON_JOINER;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.PRIVATE_USE -> true;
            default -> false;
        };
    }

    private static int mostMarks(String text) {
        int most = 0;
        int run = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            run = isMark(text.codePointAt(i)) ? run + 1 : 0;
            most = Math.max(most, run);
        }
        return most;
    }

    private static boolean isMark(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }
}
