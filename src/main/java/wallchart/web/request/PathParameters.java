package wallchart.web.request;

import io.javalin.http.Context;
import java.util.List;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** Parameters that stand in the path. */
public final class PathParameters {

    private PathParameters() {}

    /** The number of a person, of a room token or of a change. */
    public static long id(Context ctx) {
        var text = ctx.pathParam("id");
        if (!text.matches("[1-9][0-9]{0,17}")) {
            var error = new FieldError("id", null, Parameters.echo(text), "a number from 1, at most 18 digits");
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_PARAMETER, List.of(error)));
        }
        return Long.parseLong(text);
    }

    /** The number of a version. */
    public static int version(Context ctx) {
        var text = ctx.pathParam("number");
        var syntax = Syntaxes.VERSION;
        return syntax.read(text)
                .orElseThrow(() -> new RequestRefused(Problem.wrongFields(
                        ProblemCode.INVALID_PARAMETER,
                        List.of(new FieldError("number", null, Parameters.echo(text), syntax.rule())))));
    }

    /** The number of an event, 1 or more. */
    public static long event(Context ctx) {
        var text = ctx.pathParam("seq");
        return Syntaxes.EVENT
                .read(text)
                .filter(seq -> seq > 0)
                .orElseThrow(() -> new RequestRefused(Problem.wrongFields(
                        ProblemCode.INVALID_PARAMETER,
                        List.of(new FieldError(
                                "seq", null, Parameters.echo(text), "the number of an event, 1 to 999999999")))));
    }
}
