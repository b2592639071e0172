package wallchart.web.request;

import java.util.ArrayList;
import java.util.List;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** Checks the texts of one request body and reports all that are wrong at once; never repeats what was sent. */
final class Members {

    private final List<FieldError> errors = new ArrayList<>();

    Members text(String pointer, String text, int longest) {
        if (text == null || text.isEmpty() || text.length() > longest) {
            errors.add(new FieldError(null, pointer, null, "must be a text of 1 to " + longest + " characters"));
        }
        return this;
    }

    void refuseMistakes() {
        if (!errors.isEmpty()) {
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_BODY, errors));
        }
    }
}
