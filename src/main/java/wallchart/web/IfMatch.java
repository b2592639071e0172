package wallchart.web;

import io.javalin.http.Context;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** The condition of every change: that the thing still is what the caller saw (RFC 9110 section 13.1.1, strong comparison). */
final class IfMatch {

    private IfMatch() {}

    /** Ends the request unless it names that tag, telling the tag; {@code *} names nothing that anybody saw. */
    static void require(Context ctx, String tag) {
        var header = ctx.header("If-Match");
        if (header == null) {
            throw missing("If-Match is missing: send the ETag of what you saw");
        }
        if (header.strip().equals("*")) {
            throw missing(
                    "If-Match * is not accepted, since it names nothing that anybody saw: send the ETag of what you saw");
        }
        for (var one : header.split(",")) {
            if (one.strip().equals("\"" + tag + "\"")) {
                return;
            }
        }
        throw new RequestRefused(Problem.of(
                        ProblemCode.PRECONDITION_FAILED,
                        "it was changed since you saw it: look at it again, then decide")
                .withHeader("ETag", "\"" + tag + "\""));
    }

    private static RequestRefused missing(String detail) {
        return new RequestRefused(ProblemCode.PRECONDITION_REQUIRED, detail);
    }
}
