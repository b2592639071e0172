package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.RowReading.Problem;
import wallchart.chart.Texts;

/** Checks what people write beside a change; gathers all that is wrong. */
final class Words {

    /** A reason of fewer visible characters explains nothing. Common practice, no source. */
    private static final int LEAST_REASON = 10;

    private final List<Problem> problems = new ArrayList<>();

    Words title(String text) {
        return check("title", text, 1, 120);
    }

    Words reason(String text) {
        return check("reason", text, LEAST_REASON, 2000);
    }

    Words meaning(String text) {
        return check("meaning", text, 1, 200);
    }

    Words findings(String text) {
        return check("findings", text, LEAST_REASON, 2000);
    }

    private Words check(String field, String text, int least, int most) {
        Texts.problems(text, least, most).forEach(problem -> problems.add(new Problem(field, problem)));
        return this;
    }

    List<Problem> problems() {
        return problems;
    }
}
