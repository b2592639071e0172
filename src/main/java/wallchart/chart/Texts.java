package wallchart.chart;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Reasons;

/** What every text that is signed must be: of bounded length, and written one way only, so that its digest is the same everywhere. */
public final class Texts {

    private Texts() {}

    /** Why the text may not be signed; empty where it may. */
    public static Optional<String> problem(String text, int mostCharacters) {
        if (text.length() > mostCharacters) {
            return Optional.of(
                    "has " + text.length() + " characters, at most " + mostCharacters + " are kept: shorten it");
        }
        if (text.codePoints().anyMatch(Texts::isUnwritable)) {
            return Optional.of("holds a control character or half a character: type it anew in plain words");
        }
        if (!Normalizer.isNormalized(text, Normalizer.Form.NFC)) {
            return Optional.of("is not in Unicode normal form C: type it anew, or save the file as NFC");
        }
        return Optional.empty();
    }

    /** Everything that speaks against a text of which a reader must see so many characters; empty where it will do. */
    public static List<String> problems(String text, int leastVisible, int mostCharacters) {
        var problems = new ArrayList<String>();
        long visible = Reasons.visible(text);
        if (visible < leastVisible) {
            problems.add("has " + visible + " visible characters, at least " + leastVisible + " are needed: say more");
        }
        problem(text, mostCharacters).ifPresent(problems::add);
        return problems;
    }

    private static boolean isUnwritable(int codePoint) {
        return Character.isISOControl(codePoint)
                || Character.getType(codePoint) == Character.SURROGATE
                || !Character.isDefined(codePoint);
    }
}
