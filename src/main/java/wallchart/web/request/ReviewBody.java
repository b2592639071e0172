package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import wallchart.audit.EventFilter;
import wallchart.audit.Review;
import wallchart.web.view.Json;

/**
 * A review as it is sent: the period, what else was looked at, and what was found.
 *
 * @param from RFC 3339
 * @param to RFC 3339
 * @param room may be left out, as actor and action may
 */
public record ReviewBody(String from, String to, String room, String actor, String action, String findings) {

    private static final int LONGEST_FINDINGS = 4000;
    private static final int LONGEST_INSTANT = 40;
    private static final ObjectReader READER = Json.readerFor(ReviewBody.class);

    /** The body of that request, or the end of the request. */
    public static Review read(Context ctx) {
        ReviewBody body = Bodies.readJson(ctx, READER);
        var members = new Members();
        members.text("/from", body.from(), LONGEST_INSTANT)
                .text("/to", body.to(), LONGEST_INSTANT)
                .plainText("/findings", body.findings(), LONGEST_FINDINGS)
                .refuseMistakes();
        var from = members.find("/from", body.from(), Syntaxes.INSTANT);
        var to = members.find("/to", body.to(), Syntaxes.INSTANT);
        from.flatMap(start -> to.flatMap(end -> Review.findPeriodProblem(start, end)))
                .ifPresent(problem -> members.wrong("/to", problem));
        Review.findFindingsProblem(body.findings()).ifPresent(problem -> members.wrong("/findings", problem));
        var filter = new EventFilter(
                members.find("/room", body.room(), Syntaxes.SLUG),
                members.find("/actor", body.actor(), Syntaxes.ACTOR),
                members.find("/action", body.action(), Syntaxes.SLUG),
                from,
                to);
        members.refuseMistakes();
        return new Review(filter, body.findings());
    }
}
