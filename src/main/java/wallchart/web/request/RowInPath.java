package wallchart.web.request;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ExaminationKey;
import wallchart.chart.RowKey;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters.Syntax;

/** The key of a row as five parts of an address: {@code KNEE/ap/adult/table-bucky/10-13}. */
public final class RowInPath {

    private final Context ctx;
    private final List<FieldError> errors = new ArrayList<>();

    private RowInPath(Context ctx) {
        this.ctx = ctx;
    }

    /** The key, or the end of the request naming every part that is wrong. */
    public static RowKey key(Context ctx) {
        return new RowInPath(ctx).read();
    }

    private RowKey read() {
        var bodyPart = part("bodyPart", ChangeSyntaxes.TERM);
        var projection = part("projection", ChangeSyntaxes.TERM);
        var group = part("patientGroup", ChangeSyntaxes.TERM);
        var support = part("support", Syntaxes.SUPPORT);
        var band = part("band", ChangeSyntaxes.BAND);
        if (!errors.isEmpty()) {
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_PARAMETER, errors));
        }
        var examination = new ExaminationKey(bodyPart.get(), projection.get(), group.get(), support.get());
        return new RowKey(examination, band.get());
    }

    private <T> Optional<T> part(String name, Syntax<T> syntax) {
        var text = ctx.pathParam(name);
        var value = syntax.read(text);
        if (value.isEmpty()) {
            errors.add(new FieldError(name, null, Parameters.echo(text), syntax.rule()));
        }
        return value;
    }
}
