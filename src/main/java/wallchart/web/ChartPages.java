package wallchart.web;

import io.javalin.http.Context;
import java.util.Set;
import wallchart.chart.ChartVersion;
import wallchart.chart.Comparison;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.request.Syntaxes;
import wallchart.web.view.ComparisonView;
import wallchart.web.view.FindingView;
import wallchart.web.view.VersionView;

/** The history of a room's chart, for people. Versions never change, so their content may be kept for ever. */
final class ChartPages {

    private static final String ASK_AGAIN = "private, no-cache";
    private static final String FOR_EVER = "private, max-age=31536000, immutable";
    private static final Set<String> BOTH_ENDS = Set.of("from", "to");

    private final Services services;

    ChartPages(Services services) {
        this.services = services;
    }

    void versions(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var heads = services.charts().versions(room);
        VersionLinks.ofHistory(room, heads).write(ctx);
        if (!Answers.isKnown(ctx, VersionTags.of(heads), ASK_AGAIN)) {
            Answers.json(ctx, VersionView.History.of(room, heads));
        }
    }

    void version(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var version = version(room, PathParameters.version(ctx));
        VersionLinks.of(version.head(), services.charts().versions(room)).write(ctx);
        if (!Answers.isKnown(ctx, VersionTags.of(version.head()), ASK_AGAIN)) {
            Answers.json(ctx, VersionView.of(version));
        }
    }

    /** The answer never changes, so it links to the predecessor only: a successor may still come. */
    void rows(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var version = version(room, PathParameters.version(ctx));
        VersionLinks.toPredecessor(version.head()).write(ctx);
        if (!Answers.isKnown(ctx, VersionTags.of(version.head()), FOR_EVER)) {
            Answers.json(ctx, VersionView.Content.of(version));
        }
    }

    /** Of the room as it is equipped now and the site's rules of today, so nothing of it may be kept. */
    void findings(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms());
        var version = version(room.id(), PathParameters.version(ctx));
        Answers.json(ctx, FindingView.All.of(services.charts().check(version, room)));
    }

    void compare(Context ctx) {
        var parameters = Parameters.of(ctx.queryString(), BOTH_ENDS, Set.of());
        var from = parameters.require("from", Syntaxes.VERSION);
        var to = parameters.require("to", Syntaxes.VERSION);
        parameters.refuseMistakes();
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var older = version(room, from);
        var newer = version(room, to);
        if (!Answers.isKnown(ctx, VersionTags.of(older.head(), newer.head()), FOR_EVER)) {
            var comparison = Comparison.of(older.content(), newer.content());
            Answers.json(ctx, ComparisonView.of(room, from, to, comparison));
        }
    }

    private ChartVersion version(String room, int number) {
        return version(services, room, number);
    }

    /** The version, or the end of the request. */
    static ChartVersion version(Services services, String room, int number) {
        return services.charts()
                .version(room, number)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_VERSION,
                        "the chart of room " + room + " has no version " + number + ": see GET /api/v1/charts/" + room
                                + "/versions"));
    }
}
