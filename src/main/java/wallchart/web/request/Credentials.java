package wallchart.web.request;

import java.util.ArrayList;
import java.util.List;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/**
 * What somebody signs in with.
 *
 * @param name 1 to 64 characters
 * @param password 1 to 256 characters
 */
public record Credentials(String name, String password) {

    private static final int LONGEST_NAME = 64;
    private static final int LONGEST_PASSWORD = 256;

    /** This, or the end of the request. Never repeats what was sent. */
    public Credentials checked() {
        var errors = new ArrayList<FieldError>();
        check("/name", name, LONGEST_NAME, errors);
        check("/password", password, LONGEST_PASSWORD, errors);
        if (!errors.isEmpty()) {
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_BODY, errors));
        }
        return this;
    }

    private static void check(String pointer, String text, int longest, List<FieldError> errors) {
        if (text == null || text.isEmpty() || text.length() > longest) {
            errors.add(new FieldError(null, pointer, null, "must be a text of 1 to " + longest + " characters"));
        }
    }

    /** Without the password. */
    @Override
    public String toString() {
        return "credentials of " + name;
    }
}
