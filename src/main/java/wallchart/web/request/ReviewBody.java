package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.util.Optional;
import wallchart.audit.EventFilter;
import wallchart.audit.Review;
import wallchart.web.request.Parameters.Syntax;
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
        new Members()
                .text("/from", body.from(), LONGEST_INSTANT)
                .text("/to", body.to(), LONGEST_INSTANT)
                .text("/findings", body.findings(), LONGEST_FINDINGS)
                .refuseMistakes();
        var filter = new EventFilter(
                optional("/room", body.room(), Syntaxes.SLUG),
                optional("/actor", body.actor(), Syntaxes.ACTOR),
                optional("/action", body.action(), Syntaxes.SLUG),
                optional("/from", body.from(), Syntaxes.INSTANT),
                optional("/to", body.to(), Syntaxes.INSTANT));
        try {
            return new Review(filter, body.findings());
        } catch (IllegalArgumentException wrong) {
            throw AccountBodies.wrong(
                    wrong.getMessage().startsWith("findings") ? "/findings" : "/to", wrong.getMessage());
        }
    }

    private static <T> Optional<T> optional(String pointer, String text, Syntax<T> syntax) {
        if (text == null) {
            return Optional.empty();
        }
        var value = syntax.read(text);
        if (value.isEmpty()) {
            throw AccountBodies.wrong(pointer, syntax.rule());
        }
        return value;
    }
}
