package wallchart.web.request;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wallchart.chart.BodyRegion;
import wallchart.print.PaperSize;
import wallchart.print.Selection;
import wallchart.print.SheetNumber;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters.Syntax;

/**
 * Which sheet is asked for.
 *
 * @param paper A4 where nothing is said
 */
public record SheetRequest(PaperSize paper, Selection selection) {

    private static final Set<String> NAMES = Set.of("paper", "patientGroup", "region");
    private static final Syntax<PaperSize> PAPER = new Syntax<>("a4 or letter", PaperSize::find);
    private static final Syntax<BodyRegion> REGION = new Syntax<>(
            "one of " + Arrays.stream(BodyRegion.values()).map(BodyRegion::slug).collect(Collectors.joining(", ")),
            BodyRegion::find);
    private static final String NUMBER = "the number of a sheet: 12 letters and digits, with or without hyphens";

    /** @param query as it stands in the address; null for none */
    public static SheetRequest read(String query) {
        var parameters = Parameters.of(query, NAMES, Set.of());
        var asked = new SheetRequest(
                parameters.find("paper", PAPER).orElse(PaperSize.A4),
                new Selection(parameters.find("patientGroup", Syntaxes.SLUG), parameters.find("region", REGION)));
        parameters.refuseMistakes();
        return asked;
    }

    /** The sheet that the address names. */
    public static SheetNumber number(Context ctx) {
        var typed = ctx.pathParam("id");
        return SheetNumber.find(typed)
                .orElseThrow(() -> new RequestRefused(Problem.wrongFields(
                        ProblemCode.INVALID_PARAMETER,
                        List.of(new FieldError("id", null, Parameters.echo(typed), NUMBER)))));
    }
}
