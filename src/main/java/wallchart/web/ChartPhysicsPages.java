package wallchart.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import wallchart.chart.ChartVersion;
import wallchart.chart.Finding;
import wallchart.equipment.RoomRevision;
import wallchart.technique.OutputSinceSigning;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.ExaminationFilter;
import wallchart.web.request.PathParameters;
import wallchart.web.view.ChartPhysicsView;

/** A version of a room's chart held against beam physics, in the room as it is equipped now. */
final class ChartPhysicsPages {

    private static final String ASK_AGAIN = "private, no-cache";

    private final Services services;

    ChartPhysicsPages(Services services) {
        this.services = services;
    }

    /** A version never changes; equipment and settings may, so they stand in the entity tag beside it. */
    void physics(Context ctx) {
        var filter = ExaminationFilter.read(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var version = ChartPages.version(services, room, PathParameters.version(ctx));
        var equipment = equipment(room);
        requireRows(filter, version);
        if (!Answers.isKnown(ctx, tag(version, equipment), ASK_AGAIN)) {
            var report = services.physics().check(equipment.room(), version.content(), filter);
            var ofChart = new ArrayList<Finding>();
            services.physics()
                    .since(version, equipment, services.rooms().revisions(room))
                    .flatMap(OutputSinceSigning::finding)
                    .ifPresent(ofChart::add);
            ofChart.addAll(services.physics().unreachable(equipment.room(), version.content(), filter));
            Answers.json(ctx, ChartPhysicsView.of(version.head(), equipment, report, ofChart));
        }
    }

    private RoomRevision equipment(String room) {
        var revisions = services.rooms().revisions(room);
        return revisions.get(revisions.size() - 1);
    }

    private String tag(ChartVersion version, RoomRevision equipment) {
        return VersionTags.of(version.head()) + "." + VersionTags.of(equipment) + "."
                + services.physics().settingsDigest();
    }

    private static void requireRows(ExaminationFilter filter, ChartVersion version) {
        if (version.content().rows().stream()
                .noneMatch(row -> filter.test(row.key().examination()))) {
            throw new RequestRefused(
                    ProblemCode.UNKNOWN_ROW,
                    "version " + version.head().number() + " of room "
                            + version.head().room()
                            + " has no rows of that examination: leave parameters out, or see GET"
                            + " /api/v1/charts/" + version.head().room() + "/versions/"
                            + version.head().number() + "/rows");
        }
    }
}
