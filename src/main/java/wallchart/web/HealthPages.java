package wallchart.web;

import io.javalin.http.Context;
import java.util.Map;
import wallchart.people.People;
import wallchart.web.request.Parameters;

/** For whoever keeps the service running. */
final class HealthPages {

    /** No token of ours; asking for it reaches the database, at most once a second. */
    private static final String NO_TOKEN = "-";

    private final People people;

    HealthPages(People people) {
        this.people = people;
    }

    /** The process answers. */
    void live(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, Map.of("status", "live"));
    }

    /** The database answers too; where it does not, its exception becomes 503. */
    void ready(Context ctx) {
        Parameters.none(ctx.queryString());
        people.session(NO_TOKEN);
        Answers.json(ctx, Map.of("status", "ready"));
    }
}
