package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import wallchart.chart.RowFields;
import wallchart.planning.BandPlan;
import wallchart.planning.PlanRequest;
import wallchart.quantity.PartThickness;
import wallchart.web.request.Parameters.Syntax;
import wallchart.web.view.Json;

/** What somebody sends who wants a set of bands drafted. */
public final class PlanBodies {

    static final int LONGEST_TITLE = 120;
    static final int LONGEST_REASON = 2000;
    static final int MOST_VERSIONS = 999_999;
    private static final int LONGEST_KEY = 150;
    private static final BigDecimal THICKEST = new BigDecimal(60);
    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,3}(?:\\.[0-9]{1,2})?");

    private static final ObjectReader BODY = Json.readerFor(PlanBody.class);

    private static final Syntax<BandPlan.Kind> KIND =
            new Syntax<>("one of fixed-kv, variable-kv, flat-exposure", BandPlan.Kind::find);

    private static final Syntax<PartThickness> CENTIMETRES = new Syntax<>(
            "must be 0 to 60 cm, plain decimal digits such as 12.5, at most 2 decimals",
            digits -> plain(digits).filter(cm -> cm.compareTo(THICKEST) <= 0).map(PartThickness::new));

    private static final Syntax<BigDecimal> RATE =
            new Syntax<>("must be over 0 and at most 10 kV per cm, at most 2 decimals", digits -> plain(digits)
                    .filter(rate -> rate.signum() > 0 && rate.compareTo(BigDecimal.TEN) <= 0));

    private PlanBodies() {}

    record PlanBody(
            String title,
            String reason,
            Integer baseVersion,
            String row,
            WrittenFields technique,
            String plan,
            WrittenNumber kVPerCm,
            WrittenNumber fromCm,
            WrittenNumber toCm,
            WrittenNumber bandWidthCm) {}

    /** A plan that is to become a change. */
    public record Opening(String title, String reason, PlanRequest plan) {}

    /** A plan to look at; title and reason are not looked at. */
    public static PlanRequest plan(Context ctx) {
        PlanBody body = Bodies.readJson(ctx, BODY);
        return plan(body, new Members());
    }

    /** A plan with the words of its change. */
    public static Opening opening(Context ctx) {
        PlanBody body = Bodies.readJson(ctx, BODY);
        var members = new Members();
        words(members, body.title(), body.reason());
        return new Opening(body.title(), body.reason(), plan(body, members));
    }

    static void words(Members members, String title, String reason) {
        members.plainText("/title", title, LONGEST_TITLE).plainText("/reason", reason, LONGEST_REASON);
    }

    private static PlanRequest plan(PlanBody body, Members members) {
        var base = baseVersion(members, body.baseVersion());
        var technique = technique(members, body);
        var kind = given(members, "/plan", body.plan(), KIND);
        var rate = members.find("/kVPerCm", WrittenNumber.of(body.kVPerCm()), RATE);
        var from = given(members, "/fromCm", WrittenNumber.of(body.fromCm()), CENTIMETRES);
        var to = given(members, "/toCm", WrittenNumber.of(body.toCm()), CENTIMETRES);
        var width = given(members, "/bandWidthCm", WrittenNumber.of(body.bandWidthCm()), CENTIMETRES);
        members.refuseMistakes();
        BandPlan.problems(kind.get(), rate, from.get(), to.get(), width.get())
                .forEach(problem -> members.wrong("/" + problem.field(), problem.message()));
        members.refuseMistakes();
        return new PlanRequest(
                base, technique.get(), new BandPlan(kind.get(), rate, from.get(), to.get(), width.get()));
    }

    static Optional<Integer> baseVersion(Members members, Integer baseVersion) {
        if (baseVersion != null) {
            members.number("/baseVersion", baseVersion, 0, MOST_VERSIONS);
        }
        return Optional.ofNullable(baseVersion);
    }

    private static Optional<PlanRequest.Technique> technique(Members members, PlanBody body) {
        if ((body.row() == null) == (body.technique() == null)) {
            members.wrong("/row", "name a row of the chart, or write out technique: one of the two");
            return Optional.empty();
        }
        if (body.row() != null) {
            members.plainText("/row", body.row(), LONGEST_KEY);
            return Optional.of(new PlanRequest.Named(body.row()));
        }
        EditBodies.check(members, "/technique", body.technique(), RowFields.NAMES);
        return Optional.of(new PlanRequest.Written(body.technique().texts()));
    }

    private static <T> Optional<T> given(Members members, String pointer, String text, Syntax<T> syntax) {
        members.given(pointer, text, syntax);
        return Optional.ofNullable(text).flatMap(syntax::read);
    }

    private static Optional<BigDecimal> plain(String digits) {
        return PLAIN.matcher(digits).matches() ? Optional.of(new BigDecimal(digits)) : Optional.empty();
    }
}
