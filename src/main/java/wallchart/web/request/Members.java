package wallchart.web.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.store.PlainText;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters.Syntax;

/** Checks the texts of one request body and reports all that are wrong at once; never repeats what was sent. */
final class Members {

    private final List<FieldError> errors = new ArrayList<>();

    Members text(String pointer, String text, int longest) {
        if (text == null || text.isEmpty() || text.length() > longest) {
            wrong(pointer, "must be a text of 1 to " + longest + " characters");
        }
        return this;
    }

    /** A text that will be kept and printed: a reader sees all of it. */
    Members plainText(String pointer, String text, int longest) {
        text(pointer, text, longest);
        if (text != null) {
            PlainText.problem(text, Integer.MAX_VALUE).ifPresent(problem -> wrong(pointer, problem));
        }
        return this;
    }

    Members number(String pointer, Integer number, int least, int most) {
        if (number == null || number < least || number > most) {
            wrong(pointer, "must be a whole number from " + least + " to " + most);
        }
        return this;
    }

    /** A member that must be there and follow its rule. */
    Members given(String pointer, String text, Syntax<?> syntax) {
        if (text == null || syntax.read(text).isEmpty()) {
            wrong(pointer, syntax.rule());
        }
        return this;
    }

    /** A member that may be left out; empty also where it is wrong, which {@link #refuseMistakes()} reports. */
    <T> Optional<T> find(String pointer, String text, Syntax<T> syntax) {
        var value = Optional.ofNullable(text).flatMap(syntax::read);
        if (text != null && value.isEmpty()) {
            wrong(pointer, syntax.rule());
        }
        return value;
    }

    void wrong(String pointer, String detail) {
        errors.add(new FieldError(null, pointer, null, detail));
    }

    void refuseMistakes() {
        if (!errors.isEmpty()) {
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_BODY, errors));
        }
    }
}
