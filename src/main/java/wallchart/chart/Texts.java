package wallchart.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Reasons;
import wallchart.store.PlainText;

/** What every text that is signed must be: plain ({@link PlainText}), of bounded length, and long enough to say something. */
public final class Texts {

    private Texts() {}

    /** Why the text may not be signed; empty where it may. */
    public static Optional<String> problem(String text, int mostCharacters) {
        return PlainText.problem(text, mostCharacters);
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
}
