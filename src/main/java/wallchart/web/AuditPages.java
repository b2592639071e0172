package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Set;
import wallchart.audit.AuditTrail;
import wallchart.audit.EventFilter;
import wallchart.audit.EventOrder;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.request.ReviewBody;
import wallchart.web.request.Syntaxes;
import wallchart.web.view.EventView;
import wallchart.web.view.VerificationView;

/** The ledger, for those who audit. */
final class AuditPages {

    private static final String LINES = "application/x-ndjson";
    private static final int USUAL_PAGE = 100;
    private static final Set<String> FILTERS =
            Set.of("after", "limit", "room", "actor", "action", "from", "to", "order");

    private final AuditTrail trail;
    private final Clock clock;

    AuditPages(AuditTrail trail, Clock clock) {
        this.trail = trail;
        this.clock = clock;
    }

    void events(Context ctx) {
        var asked = Parameters.of(ctx.queryString(), FILTERS, Set.of());
        long after = asked.find("after", Syntaxes.EVENT).orElse(0L);
        int limit = asked.find("limit", Syntaxes.PAGE).orElse(USUAL_PAGE);
        var order = asked.find("order", Syntaxes.EVENT_ORDER).orElse(EventOrder.OLDEST);
        var filter = new EventFilter(
                asked.find("room", Syntaxes.SLUG),
                asked.find("actor", Syntaxes.ACTOR),
                asked.find("action", Syntaxes.SLUG),
                asked.find("from", Syntaxes.INSTANT),
                asked.find("to", Syntaxes.INSTANT));
        asked.refuseMistakes();
        Answers.json(ctx, EventView.Page.of(trail.page(filter, order, after, limit), limit));
    }

    void event(Context ctx) {
        Parameters.none(ctx.queryString());
        long seq = PathParameters.event(ctx);
        Answers.json(
                ctx,
                trail.findWhole(seq)
                        .map(EventView.Whole::of)
                        .orElseThrow(() -> new RequestRefused(
                                ProblemCode.UNKNOWN_EVENT,
                                "the ledger has no event " + seq + ": see GET /api/v1/audit/events?order=newest")));
    }

    void verification(Context ctx) {
        Parameters.none(ctx.queryString());
        var found = trail.verify();
        Answers.json(ctx, VerificationView.of(found, trail.findStop(), clock.instant()));
    }

    void review(Context ctx) {
        Parameters.none(ctx.queryString());
        var recorded = trail.review(Doorkeeper.actor(ctx), ReviewBody.read(ctx));
        ctx.status(HttpStatus.CREATED);
        Answers.json(ctx, EventView.of(recorded));
    }

    void export(Context ctx) {
        Parameters.none(ctx.queryString());
        ctx.res().setContentType(LINES);
        ctx.header("Content-Disposition", "attachment; filename=\"ledger.ndjson\"");
        trail.export(line -> write(ctx, line + "\n"));
    }

    private static void write(Context ctx, String line) {
        try {
            ctx.res().getOutputStream().write(line.getBytes(StandardCharsets.UTF_8));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
