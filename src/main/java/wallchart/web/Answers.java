package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.view.Json;

/** How handlers answer: JSON, JSON that may be kept, or a problem. */
final class Answers {

    static final Logger LOG = LoggerFactory.getLogger(Answers.class);
    private static final String JSON = "application/json";

    private Answers() {}

    /** The view as JSON, never to be stored on the way. */
    static void json(Context ctx, Object view) {
        ctx.res().setContentType(JSON);
        ctx.result(Json.bytes(view));
    }

    /**
     * Whether the caller already has it; then the answer is 304 and done.
     *
     * @param tag changes whenever the body does
     * @param keeping the Cache-Control of the answer
     */
    static boolean isKnown(Context ctx, String tag, String keeping) {
        var strong = "\"" + tag + "\"";
        ctx.header("ETag", strong);
        ctx.header("Cache-Control", keeping);
        var known = EntityTags.match(ctx.header("If-None-Match"), strong);
        if (known) {
            ctx.status(HttpStatus.NOT_MODIFIED);
        }
        return known;
    }

    /** Ends a request with what went wrong; a fault of the program goes to the log, not to the caller. */
    static void failure(Exception thrown, Context ctx) {
        var problem = Failures.of(thrown);
        if (problem.code() == ProblemCode.FAULT || problem.code() == ProblemCode.UNAVAILABLE) {
            LOG.error("request {} {} {} failed", Standing.id(ctx.req()), ctx.method(), ctx.path(), thrown);
        }
        problem(ctx, problem);
    }

    static void problem(Context ctx, Problem problem) {
        problem.headers().forEach(ctx::header);
        ctx.header("Cache-Control", "no-store");
        ctx.res().setHeader("ETag", null);
        ctx.status(problem.code().status());
        ctx.res().setContentType(Problem.MEDIA_TYPE);
        ctx.result(Json.bytes(problem.body(ServerErrors.instance(ctx.req().getRequestURI()), Standing.id(ctx.req()))));
    }
}
