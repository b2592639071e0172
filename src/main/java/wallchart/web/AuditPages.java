package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import wallchart.audit.AuditTrail;
import wallchart.audit.EventFilter;
import wallchart.web.request.Parameters;
import wallchart.web.request.ReviewBody;
import wallchart.web.request.Syntaxes;
import wallchart.web.view.EventView;
import wallchart.web.view.VerificationView;

/** The ledger, for those who audit. */
final class AuditPages {

    private static final String LINES = "application/x-ndjson";
    private static final int USUAL_PAGE = 100;
    private static final Set<String> FILTERS = Set.of("after", "limit", "room", "actor", "action", "from", "to");

    private final AuditTrail trail;

    AuditPages(AuditTrail trail) {
        this.trail = trail;
    }

    void events(Context ctx) {
        var asked = Parameters.of(ctx.queryString(), FILTERS, Set.of());
        long after = asked.find("after", Syntaxes.EVENT).orElse(0L);
        int limit = asked.find("limit", Syntaxes.PAGE).orElse(USUAL_PAGE);
        var filter = new EventFilter(
                asked.find("room", Syntaxes.SLUG),
                asked.find("actor", Syntaxes.ACTOR),
                asked.find("action", Syntaxes.SLUG),
                asked.find("from", Syntaxes.INSTANT),
                asked.find("to", Syntaxes.INSTANT));
        asked.refuseMistakes();
        Answers.json(ctx, EventView.Page.of(trail.page(filter, after, limit), limit));
    }

    void verification(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, VerificationView.of(trail.verify()));
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
