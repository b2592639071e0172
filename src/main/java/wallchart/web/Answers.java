package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.view.Json;

/** How handlers answer: JSON, JSON that may be kept, or a problem. */
final class Answers {

    private static final Logger LOG = LoggerFactory.getLogger(Answers.class);
    static final String JSON = "application/json";

    private Answers() {}

    /** The view as JSON, which is this server's default type; not to be stored on the way unless {@link #isKnown} says otherwise. */
    static void json(Context ctx, Object view) {
        var written = Json.written(view);
        ctx.res().setContentLength(written.size());
        try {
            written.writeTo(ctx.res().getOutputStream());
        } catch (IOException gone) {
            LOG.debug("request {}: the caller is gone", Standing.id(ctx.req()), gone);
        }
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
        if (problem.code() == ProblemCode.FAULT) {
            LOG.error("request {} {} {} failed", Standing.id(ctx.req()), ctx.method(), ctx.path(), thrown);
        } else if (problem.code() == ProblemCode.UNAVAILABLE) {
            LOG.warn("request {} {} {}: {}", Standing.id(ctx.req()), ctx.method(), ctx.path(), thrown.getMessage());
        }
        problem(ctx, problem);
    }

    /** As {@link #failure}, where the Java machine itself gave up, such as on too deep a recursion. */
    static void error(HttpServletResponse response, Error error) {
        var id = response.getHeader(Standing.REQUEST_ID);
        LOG.error("request {} ended in an error of the Java machine", id, error);
        var problem = Failures.fault();
        response.setStatus(problem.code().status());
        response.setContentType(Problem.MEDIA_TYPE);
        try {
            response.getOutputStream().write(Json.bytes(problem.body("/", id)));
        } catch (IOException gone) {
            LOG.debug("request {}: the caller is gone", id, gone);
        }
    }

    static void problem(Context ctx, Problem problem) {
        ctx.res().setHeader("ETag", null);
        problem.headers().forEach(ctx::header);
        ctx.header("Cache-Control", "no-store");
        ctx.status(problem.code().status());
        ctx.res().setCharacterEncoding((String) null); // JSON is UTF-8 always: no parameter says so again
        ctx.res().setContentType(Problem.MEDIA_TYPE);
        ctx.result(Json.bytes(problem.body(ServerErrors.instance(ctx.req().getRequestURI()), Standing.id(ctx.req()))));
    }
}
